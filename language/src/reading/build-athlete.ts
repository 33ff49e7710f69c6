import type { AthleteEntry } from '../model/entry.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { MassUnit } from '../units/mass.ts';
import { buildLoad } from './build-load.ts';
import { buildMass, buildMasses, readLineUnits } from './build-mass.ts';
import { buildSet } from './build-sets.ts';
import { buildDate, buildName, readUnit } from './build-values.ts';
import { type EntryReading, type Facts, present, spanOf } from './line-reading.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] extends readonly (infer E)[] ? E[] : T[K] };

/** What an `athlete` says of body, maxes, goals and what to avoid. */
export function buildAthleteFacts(
  reading: EntryReading,
  lines: readonly ast.AthleteLine[],
): Facts<AthleteEntry> {
  const facts: Mutable<Facts<AthleteEntry>> = {
    weighIns: [],
    maxes: [],
    goals: [],
    retests: [],
    avoid: [],
    away: [],
    screened: [],
  };
  for (const line of lines) if (line.$cstNode) takeLine(reading, facts, line);
  return facts;
}

function takeLine(reading: EntryReading, facts: Mutable<Facts<AthleteEntry>>, line: ast.AthleteLine): void {
  const span = spanOf(line);
  const missing = (message: string): undefined => reading.expect('missing-value', span, message);
  switch (line.$type) {
    case 'BornLine':
      if (!reading.once(facts.born, span, 'born')) break;
      if (line.year === undefined) missing('Expected a year after born, such as 1991');
      else if (/^(?:19|20)\d\d$/.test(line.year)) facts.born = Number(line.year);
      else
        reading.report(
          'out-of-range',
          span,
          `${line.year} is no year of birth: write all four digits, such as 1991`,
        );
      break;
    case 'SexLine':
      if (!reading.once(facts.sex, span, 'sex')) break;
      if (line.sex) facts.sex = line.sex;
      else missing('Expected female or male after sex');
      break;
    case 'AthleteUnitsLine':
      if (!reading.once(facts.units, span, 'units')) break;
      if (line.unit)
        facts.units = readUnit(reading, line.unit, {
          ...span,
          start: span.end - line.unit.length,
        }) as MassUnit;
      else missing('Expected kg or lb after units');
      break;
    case 'WeighInLine': {
      if (!line.mass || !line.date)
        missing('Expected a weight and a day after bodyweight, such as 68.5 kg on 2026-10-01');
      const mass = buildMass(reading, readLineUnits(line, 'bodyGrams'), line.mass);
      const date = buildDate(reading, line.date)?.date;
      if (mass && date) facts.weighIns.push({ mass, date, span });
      break;
    }
    case 'MaxLine': {
      const name = present(line.name);
      if (!name || !line.load || !line.date) {
        missing(
          'Expected a movement, its load and a day after max, such as Back Squat: 105 kg on 2026-09-28',
        );
      }
      const load = line.load && buildLoad(reading, readLineUnits(line), line.load);
      const date = buildDate(reading, line.date)?.date;
      if (name)
        facts.maxes.push({ movement: buildName(name), ...(load && { load }), ...(date && { date }), span });
      break;
    }
    case 'GoalLine': {
      const name = present(line.name);
      if (!name || !line.set)
        missing('Expected a movement and a set after goal, such as Pull-up: 8 @ bw by 2027-06-01');
      const set = present(line.set) && buildSet(reading, readLineUnits(line), line.set!);
      const by = buildDate(reading, line.date)?.date;
      if (name) facts.goals.push({ movement: buildName(name), ...(set && { set }), ...(by && { by }), span });
      break;
    }
    case 'RetestLine': {
      const name = present(line.name);
      if (!name || line.masses.length === 0 || !line.date) {
        missing(
          'Expected a movement, two loads and a day after retest, such as Back Squat: 100, 102.5 kg on 2026-09-28',
        );
      }
      const masses = buildMasses(reading, readLineUnits(line), line.masses);
      const date = buildDate(reading, line.date)?.date;
      if (name) facts.retests.push({ movement: buildName(name), masses, ...(date && { date }), span });
      break;
    }
    case 'AvoidLine': {
      const name = present(line.name);
      if (!name) missing('Expected a pattern or a movement after avoid, such as vertical push');
      const until = buildDate(reading, line.date)?.date;
      if (line.isLimited && !line.date) missing('Expected a date after until, such as 2026-12-15');
      const reason = present(line.reason) && buildName(line.reason!).text;
      if (name)
        facts.avoid.push({ what: buildName(name), ...(until && { until }), ...(reason && { reason }), span });
      break;
    }
    case 'AwayLine': {
      if (!line.start || !line.end) missing('Expected two days after away, such as 2026-12-19 to 2027-01-03');
      const [from, to] = [buildDate(reading, line.start)?.date, buildDate(reading, line.end)?.date];
      const reason = present(line.reason) && buildName(line.reason!).text;
      const inOrder = !from || !to || from <= to;
      if (!inOrder) reading.report('range-order', span, 'The first day away comes before the last');
      else if (from || to)
        facts.away.push({ ...(from && { from }), ...(to && { to }), ...(reason && { reason }), span });
      break;
    }
    case 'ScreenedLine': {
      if (!line.date) missing('Expected a date after screened, such as 2026-11-17');
      const date = buildDate(reading, line.date)?.date;
      const by = present(line.by) && buildName(line.by!).text;
      if (date) facts.screened.push({ date, ...(by && { by }), span });
    }
  }
}
