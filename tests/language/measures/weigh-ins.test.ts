import { createPractice } from '@plimsoll/language/create-practice';
import { WeighIns } from '@plimsoll/language/measures/weigh-ins';
import { expect, test } from 'vitest';

const DEFINED = 'athlete Ann Vell\n  bodyweight 60 kg on 2026-11-01\n';
const LOG = 'session 2026-11-10\n  bodyweight 61 kg\n  Back Squat: 5 @ 60 kg\n';

function open() {
  const practice = createPractice();
  practice.setFile('defined.plim', DEFINED);
  practice.setFile('log.plim', LOG);
  const weighIns = new WeighIns(practice);
  return { practice, list: () => weighIns.of('ann vell') };
}

test('weigh-ins of definitions and of sessions come in order of days', () => {
  expect(
    open()
      .list()
      .map(({ grams }) => grams),
  ).toEqual([60_000, 61_000]);
});

test('the list is the same as long as it says the same', () => {
  const { practice, list } = open();
  const before = list();
  practice.setFile('log.plim', LOG.replace('5 @ 60 kg', '5 @ 65 kg'));
  expect(list()).toBe(before);
  practice.setFile('other.plim', 'place Gantry Loft\n');
  expect(list()).toBe(before);
  practice.setFile('log.plim', `${LOG}\nsession 2026-11-12\n  Push-Up: 9\n`);
  expect(list()).toBe(before);
});

test('a weigh-in that changes, or that is no longer known to be theirs, counts at once', () => {
  const { practice, list } = open();
  list();
  practice.setFile('log.plim', LOG.replace('61 kg', '62 kg'));
  expect(list().map(({ grams }) => grams)).toEqual([60_000, 62_000]);
  practice.setFile('other.plim', 'athlete Oda Brill\n');
  expect(list().map(({ grams }) => grams)).toEqual([60_000]);
  practice.setFile('defined.plim', DEFINED.replace('60 kg', '59 kg'));
  expect(list().map(({ grams }) => grams)).toEqual([59_000]);
});
