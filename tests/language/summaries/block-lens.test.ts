import { describe, expect, test } from 'vitest';
import { describeBlock } from '../../../language/src/summaries/block-lens.ts';
import { lastWork, practiceOf } from '../measures/practice-of.ts';

const NAME = 'Thaddea Quillon';
const MOVEMENTS = `
exercise Bar Press
  needs barbell
exercise Press Up
  bodyweight 50%, for the sums of this test
exercise Stack Pull
  needs cable
exercise Press up from a box
  also Rise
`;

/** The lens over the last session's first block, and the changes behind it. */
function lensOf(athlete: string, ...sessions: readonly string[]) {
  const log = sessions.map(
    (lines, at) => `session 2026-03-${String(2 + 7 * at).padStart(2, '0')} ${NAME}\n${lines}\n`,
  );
  const { works } = practiceOf(`${MOVEMENTS}athlete ${NAME}\n${athlete}\n${log.join('')}`);
  const work = lastWork(works, NAME);
  const block = work.record.entry.blocks[0]!;
  const lens = describeBlock(works, work, block, {
    today: '2026-03-31',
    formula: 'epley',
    unit: 'kg',
    complete: true,
  })!;
  return { text: lens.text, changes: lens.explain().filter(({ method }) => method === 'change') };
}

const circuit = (pull: string, time: string): string =>
  `  circuit, 1 round\n    Bar Press: 10 @ 40 kg\n    Press Up: 10\n    Stack Pull: 10 @ ${pull}\n    time ${time}`;

describe('the density of a circuit against the last time', () => {
  // 40 x 10 + 50 x 10 = 900 kg; 900 / 3 = 300 and 900 / 2.5 = 360 kg/min: +20 %. The body weighs 100 kg, half of it counts.
  test('of the same work', () => {
    const { text, changes } = lensOf(
      '  bodyweight 100 kg on 2026-01-01',
      circuit('pin 5', '3:00'),
      circuit('pin 5', '2:30'),
    );
    expect(text).toContain('360 kg/min incl. body, 20 % over 2 Mar');
    expect(changes[0]).toMatchObject({ bound: 'exact', inputs: [{ label: 'now' }, { label: '2 Mar' }] });
    expect(changes[0]!.value).toBeCloseTo(20, 9);
    // Once, though the pin was left out both times.
    expect(changes[0]!.omitted.filter(({ what }) => what === 'Stack Pull')).toHaveLength(1);
  });

  test('says that another weigh-in is part of it', () => {
    const { changes } = lensOf(
      '  bodyweight 100 kg on 2026-01-01\n  bodyweight 120 kg on 2026-03-05',
      circuit('pin 5', '3:00'),
      circuit('pin 5', '3:00'),
    );
    // 40 x 10 + 60 x 10 = 1 000 kg against 900.
    expect(changes[0]!.value).toBeCloseTo(100 / 9, 9);
    expect(changes[0]!.omitted).toContainEqual({
      what: 'body mass',
      why: 'another weigh-in than then is part of the change',
    });
  });

  test('is not made where other lines could be weighed', () => {
    const { text, changes } = lensOf(
      '  bodyweight 100 kg on 2026-01-01',
      circuit('pin 5', '3:00'),
      circuit('30 kg', '3:00'),
    );
    expect(text).toContain('400 kg/min incl. body, not compared: other lines had kilograms on 2 Mar');
    expect(changes).toEqual([]);
    // Nor where nobody had been weighed yet.
    const unweighed = lensOf(
      '  bodyweight 100 kg on 2026-03-05',
      circuit('pin 5', '3:00'),
      circuit('pin 5', '3:00'),
    );
    expect(unweighed.text).toContain('not compared: other lines had kilograms on 2 Mar');
  });

  test('is not made where a movement took the place of another, which is named as it is defined', () => {
    const before = circuit('30 kg', '3:00').replace('Press Up: 10', 'Rise: 10, setting box 40 cm');
    const { text } = lensOf('', before, circuit('30 kg', '3:00'));
    expect(text).toContain('Press Up in place of Press up from a box, box 40 cm since 2 Mar');
  });

  test('is a lower bound where a set now is not known', () => {
    const now = circuit('pin 5', '2:30').replace(
      'Bar Press: 10 @ 40 kg',
      'Bar Press: 10 @ 40 kg\n    Bar Press: ? @ 40 kg',
    );
    const then = circuit('pin 5', '3:00').replace(
      'Bar Press: 10 @ 40 kg',
      'Bar Press: 10 @ 40 kg\n    Bar Press: 1 @ 40 kg',
    );
    const { text, changes } = lensOf('  bodyweight 100 kg on 2026-01-01', then, now);
    // 940 / 3 = 313.3 against at least 360.
    expect(text).toContain('at least 360 kg/min incl. body, at least 15 % over 2 Mar');
    expect(changes[0]).toMatchObject({ bound: 'at least' });
  });
});
