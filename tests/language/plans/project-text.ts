import { type IsoDate, toDayNumber } from '../../../language/src/calendar/iso-date.ts';
import type { SessionWorks } from '../../../language/src/measures/session-work.ts';
import { findCourse } from '../../../language/src/plans/plan-calendar.ts';
import { explainSets, printSets } from '../../../language/src/plans/print-projected.ts';
import { projectTurn } from '../../../language/src/plans/project-plan.ts';
import type { ProjectedDay } from '../../../language/src/plans/projected.ts';
import { foldName } from '../../../language/src/text/names.ts';
import { practiceOf } from '../measures/practice-of.ts';

export const TODAY: IsoDate = '2026-11-24';
export const ATHLETE = 'Hesper Quillon';

/** Bars of 20 kg; up to 137.5 kg in steps of 2.5 kg. Dumbbells in pairs from 4 to 32 kg by 2. */
export const PLACE = `place Rookery Cellar
  bars 20 kg
  plates 4x20, 2x10, 2x5, 2x2.5, 2x1.25 kg
  dumbbells 4-32 by 2 kg pairs
`;

export const PERSON = `athlete ${ATHLETE}
  bodyweight 70 kg on 2026-01-01
  max Back Squat: 105 kg on 2026-09-01
  max Deadlift: 140 kg on 2026-09-01
`;

export interface Projection {
  readonly works: SessionWorks;
  readonly days: readonly ProjectedDay[];
}

/** All days of the first plan of a text, for its athlete. */
export function project(text: string, name = ATHLETE): Projection {
  const { practice, works } = practiceOf(text);
  const plan = practice.allPlans()[0]!;
  const options = {
    athlete: foldName(name),
    today: toDayNumber(TODAY),
    unit: 'kg',
    formula: 'epley',
  } as const;
  const turns = findCourse(practice, plan.entry).turns;
  return { works, days: turns.map((turn) => projectTurn(works, plan.entry, turn, options)) };
}

/** A plan of one day a week with one line; each week as it would be written. */
export function projectLine(
  line: string,
  {
    weeks = 6,
    properties = [] as readonly string[],
    block = 'straight, rest 2:00',
    more = '',
    place = PLACE,
    explained = false,
  } = {},
): string[] {
  const { days } = project(
    [
      place,
      PERSON,
      more,
      'plan Copper Autumn',
      `  for ${ATHLETE}`,
      '  at Rookery Cellar',
      '  starts 2026-11-02',
      `  weeks ${weeks}`,
      ...properties.map((property) => `  ${property}`),
      '  day 1',
      `    ${block}`,
      `      ${line}`,
    ].join('\n'),
  );
  return days.map(({ blocks }) => {
    const projected = blocks[0]?.lines[0];
    if (!projected) return 'nothing';
    return explained ? explainSets(projected).join(' · then ') : printSets(projected);
  });
}
