import { describe, expect, test } from 'vitest';
import type { IsoDate } from '../../../language/src/calendar/iso-date.ts';
import { toInsertion, writeNextSession } from '../../../language/src/plans/next-session.ts';
import { ATHLETE } from './project-text.ts';
import { type Case, HEADER, LOG, open } from './write-next.ts';

describe('where it goes', () => {
  const place = (example: Case, today: IsoDate, files: Readonly<Record<string, string>> = {}) => {
    const { works } = open(example);
    for (const [uri, text] of Object.entries(files)) works.practice.setFile(uri, text);
    const found = writeNextSession(works, { athlete: 'hesper quillon', today, unit: 'kg', formula: 'epley' });
    if ('refused' in found) throw new Error(found.refused);
    const lines = [...(works.practice.file(found.place.uri)?.lines ?? [''])];
    const { uri, line, column, isNew } = found.place;
    lines[line] = lines[line]!.slice(0, column) + toInsertion(found) + lines[line]!.slice(column);
    return { uri, isNew, text: lines.join('\n') };
  };
  const plan = ['Push-up: 10'];
  const log: Case['log'] = [['2026-11-02 1', 'Push-up: 10']];

  const GAP =
    "  > 29 days since the last session: loads are 90 % of the plan's, and no max is tested; after illness or injury ask a licensed practitioner";

  test('behind the last session, with an empty line between', () => {
    expect(place({ plan, log }, '2026-11-09')).toEqual({
      uri: LOG,
      isNew: false,
      text: `${HEADER('2026-11-02', 1)}\n  Push-up: 10\n\n${HEADER('2026-11-09', 2)}\n  Push-up: 10\n`,
    });
  });

  test('in a new file when the month is over', () => {
    expect(place({ plan, log }, '2026-12-01')).toEqual({
      uri: 'file:///logs/hesper/2026-12.plim',
      isNew: true,
      text: [HEADER('2026-12-01', 2), GAP, '  Push-up: 10', ''].join('\n'),
    });
  });

  test('or in that month’s file, where there is one', () => {
    const file = 'file:///logs/hesper/2026-12.plim';
    expect(place({ plan, log }, '2026-12-01', { [file]: '# December\n' })).toMatchObject({
      uri: file,
      isNew: false,
    });
    expect(place({ plan, log }, '2026-12-01', { [file]: '# December\n' }).text).toMatch(
      /^# December\n\nsession 2026-12-01 .*\n$/s,
    );
  });

  test('before the comment of what comes next in the file, and never among a group', () => {
    const text = `session 2026-11-02 ${ATHLETE}, Copper Autumn week 1 day 1\n  Push-up: 10\n\n# The others\nathlete Odo Plim\n`;
    const files = {
      'file:///logs/all.plim': text,
      'file:///logs/group.plim': `session 2026-11-05 ${ATHLETE} | Odo Plim\n  Push-up: 10\n`,
    };
    const found = place({ plan }, '2026-11-09', files);
    expect(found.uri).toBe('file:///logs/all.plim');
    expect(found.text).toContain('  Push-up: 10\n\nsession 2026-11-09');
    expect(found.text).toContain('  Push-up: 10\n\n# The others\nathlete Odo Plim\n');
  });

  test('beside the athlete’s definition, where nothing is logged yet', () => {
    expect(place({ plan }, '2026-11-02').uri).toBe('file:///logs/practice.plim');
  });
});
