import type { PerAthlete, SessionFacts } from '../model/entry.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { buildDuration } from './build-duration.ts';
import { buildMass, readLineUnits } from './build-mass.ts';
import { buildName } from './build-values.ts';
import { type EntryReading, present, spanOf, textOf, toNumber } from './line-reading.ts';

type Facts = { -readonly [K in keyof SessionFacts]: SessionFacts[K] };

/** Takes one property of a session into `facts`; false when the line is none. A repeated one is reported. */
export function buildSessionLine(reading: EntryReading, facts: Facts, line: ast.TrainingLine): boolean {
  const span = spanOf(line);
  const missing = (message: string): undefined => reading.expect('missing-value', span, message);
  switch (line.$type) {
    case 'EffortLine':
      if (!reading.once(facts.efforts, span, 'effort')) return true;
      if (line.scores.length === 0) missing('Expected a number from 0 to 10 after effort');
      else facts.efforts = { values: line.scores.map((score) => readScore(reading, score)), span };
      return true;
    case 'LastedLine':
      if (!reading.once(facts.lasted, span, 'lasted')) return true;
      if (line.times.length === 0) missing('Expected a time after lasted, such as 58 min');
      else {
        const values = line.times.map((entry) =>
          entry.unrecorded ? undefined : buildDuration(reading, entry.time, 'session'),
        );
        facts.lasted = { values, span } satisfies PerAthlete<number | undefined>;
      }
      return true;
    case 'BodyweightLine': {
      if (!reading.once(facts.bodyweight, span, 'bodyweight')) return true;
      if (!line.mass) missing('Expected a weight after bodyweight, such as 68.2 kg');
      const mass = buildMass(reading, readLineUnits(line, 'bodyGrams'), line.mass);
      if (mass) facts.bodyweight = { mass, span };
      return true;
    }
    case 'SleepLine': {
      if (!reading.once(facts.sleep, span, 'sleep')) return true;
      if (!line.time) missing('Expected hours after sleep, such as 7 h');
      const seconds = buildDuration(reading, line.time, 'hours');
      if (seconds !== undefined) facts.sleep = { hours: seconds / 3600, span };
      return true;
    }
    case 'ReadinessLine': {
      if (!reading.once(facts.readiness, span, 'readiness')) return true;
      if (line.score === undefined) missing('Expected a number from 1 to 5 after readiness');
      else if (reading.accept('readiness', toNumber(line.score), span, textOf(line))) {
        facts.readiness = { score: toNumber(line.score), span };
      }
      return true;
    }
    case 'PainLine':
      if (line.score === undefined) missing('Expected a number from 0 to 10 after pain, and where it hurts');
      else if (reading.accept('pain', toNumber(line.score), span, `pain ${line.score}`)) {
        const where = present(line.where) && buildName(line.where!).text;
        facts.pains = [...facts.pains, { score: toNumber(line.score), ...(where && { where }), span }];
      }
      return true;
    case 'MissedLine': {
      if (!reading.once(facts.missed, span, 'missed')) return true;
      const reason = present(line.reason) && buildName(line.reason!).text;
      facts.missed = { ...(reason && { reason }), span };
      return true;
    }
    default:
      return false;
  }
}

function readScore(reading: EntryReading, score: ast.Score): number | undefined {
  if (!score.$cstNode || score.value === undefined) return undefined;
  const value = toNumber(score.value);
  return reading.accept('effort', value, spanOf(score), `effort ${textOf(score)}`) ? value : undefined;
}
