import { createPractice } from '@plimsoll/language/create-practice';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import { describeLenses } from '@plimsoll/language/summaries/file-lenses';
import { describe, expect, test } from 'vitest';

const NAME = 'Leopold Ashgrove';
const OTHER = 'Hesper Nightjar';

/** The lenses of a session while other files are still read, and once they are. */
function shown(lines: string, complete: boolean, who = NAME): string[] {
  const practice = createPractice();
  practice.setFile('athletes.plim', `athlete ${NAME}\n  bodyweight 80 kg on 2026-01-01\nathlete ${OTHER}\n`);
  practice.setFile('log.plim', `session 2026-03-03 ${who}\n${lines}`);
  const options = { today: '2026-03-04', formula: 'epley', unit: 'kg', complete } as const;
  return describeLenses(new SessionWorks(practice), 'log.plim', options).map(
    ({ text, explain }) => `${text}${explain().length > 0 ? '' : ' (no numbers)'}`,
  );
}

const CIRCUIT = '  circuit, 2 rounds\n    Push-up: 10\n    time 1:00, 1:00\n';

describe('while other files are read', () => {
  test.each([
    [
      'external load stands, its comparisons do not',
      '  A straight\n    Back Squat: 5 @ 100 kg rpe 10\n',
      [
        '1 working set · 500 kg · history loading…',
        'top set 5 @ 100 kg rpe 10 · 1 working set · 500 kg',
        'e1RM 117 kg (113 to 119 by formula) from set 1 · history loading…',
      ],
    ],
    [
      'what counts body mass waits for the last weigh-in',
      CIRCUIT,
      ['2 working sets · history loading… (no numbers)', '2 rounds 2:00 · history loading… (no numbers)'],
    ],
    [
      'but for that of the session itself',
      `  bodyweight 80 kg\n${CIRCUIT}`,
      [
        '2 working sets · 1 104 kg incl. body · history loading…',
        '2 rounds 2:00 · 552 kg/min incl. body, history loading…',
      ],
    ],
    [
      'a movement may still be defined',
      '  A straight\n    Turnip Toss: 5 @ 10 kg\n',
      [
        '1 working set · history loading… (no numbers)',
        'top set 5 @ 10 kg · 1 working set · history loading… (no numbers)',
      ],
    ],
  ])('%s', (_name, lines, expected) => {
    const told = shown(lines, false);
    expect(told.slice(0, expected.length)).toEqual(expected);
    expect(shown(lines, true).join('\n')).not.toContain('loading');
    expect(shown(lines, true)).toHaveLength(told.length);
  });

  test('so do the sums of a group', () => {
    const group = `${NAME} | ${OTHER}`;
    expect(shown(CIRCUIT, false, group)).toEqual([
      `${NAME} history loading… · ${OTHER} history loading… (no numbers)`,
      `${NAME} history loading… · ${OTHER} history loading… (no numbers)`,
    ]);
    expect(shown(CIRCUIT, true, group)[0]).toBe(`${NAME} 1 104 kg incl. body · ${OTHER} 20 reps`);
  });
});
