import { describe, expect, test } from 'vitest';
import { createPractice } from '../../../language/src/create-practice.ts';
import { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { describeFileHints, describeLenses } from '../../../language/src/summaries/file-lenses.ts';

const NAME = 'Ivo Fennimore';
const session = (date: string, line: string): string => `session ${date} ${NAME}\n  ${line}\n`;

/** Line lenses and hints of the later of two sessions. */
function read(
  before: string,
  now: string,
  complete = true,
): { lenses: string[]; hints: string[]; tips: string[] } {
  const practice = createPractice();
  practice.setFile('athlete.plim', `athlete ${NAME}\n`);
  practice.setFile('a.plim', session('2026-11-02', before));
  practice.setFile('b.plim', session('2026-11-09', now));
  const works = new SessionWorks(practice);
  const options = { today: '2026-11-20', formula: 'epley', unit: 'kg', complete } as const;
  const hints = describeFileHints(works, 'b.plim', options);
  return {
    lenses: describeLenses(works, 'b.plim', options)
      .filter(({ kind }) => kind === 'line')
      .map(({ text }) => text),
    hints: hints.map(({ text }) => text),
    tips: hints.map(({ tooltip }) => tooltip),
  };
}

describe('a record', () => {
  // 100 x 37/30 = 123 before, 105 x 37/30 = 130 now.
  test('stands quietly behind what changed', () => {
    const { lenses, hints } = read('Back Squat: 5 @ 100 kg rpe 8', 'Back Squat: 5 @ 105 kg rpe 8');
    expect(lenses).toEqual(['e1RM 130 kg (123 to 130 by formula) from set 1 · +6 since 2 Nov · record']);
    expect(hints).toEqual(['+5 kg since 2 Nov · record for 5 reps']);
  });

  // 3 @ 95 kg gives 104.5 by formula, but 100 kg failed: somewhere under it, so no change and no record of it.
  test('is not said of a max that a failed load holds', () => {
    const held = 'Back Squat: 3 @ 95 kg rpe 10, 0 of 1 @ 100 kg';
    expect(read('Back Squat: 2 @ 90 kg rpe 10', held).lenses).toEqual([
      'e1RM 95 to 100 kg, lifted and failed, from set 1',
    ]);
    // 2 @ 90 kg gives 96; nothing before it can be held against it.
    expect(read(held, 'Back Squat: 2 @ 90 kg rpe 10').lenses).toEqual([
      'e1RM 96 kg (93 to 100 by formula) from set 1',
    ]);
  });

  test('is not said of the same again', () => {
    const { lenses, hints } = read('Back Squat: 5 @ 100 kg rpe 8', 'Back Squat: 5 @ 100 kg rpe 8');
    expect(lenses).toEqual(['e1RM 123 kg (118 to 124 by formula) from set 1 · same as 2 Nov']);
    expect(hints).toEqual(['same as 2 Nov']);
  });

  test('waits for the history', () => {
    const { lenses, hints } = read('Back Squat: 5 @ 100 kg rpe 8', 'Back Squat: 5 @ 105 kg rpe 8', false);
    expect(lenses).toEqual(['e1RM 130 kg (123 to 130 by formula) from set 1 · history loading…']);
    expect(hints).toEqual([]);
  });

  test('stands alone where nothing can be compared', () => {
    const { hints, tips } = read('circuit, 1 rounds\n    Back Squat: 5 @ 60 kg', 'Back Squat: 5 @ 80 kg');
    expect(hints).toEqual(['record for 5 reps']);
    expect(tips).toEqual(['More than in any session of Back Squat before']);
  });
});
