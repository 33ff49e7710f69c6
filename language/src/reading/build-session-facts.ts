import type { PerAthlete, SessionFacts } from '../model/entry.ts';
import type { Span } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { buildDuration, buildMass, buildName, readLineUnits } from './build-values.ts';
import { type EntryReading, spanOf, textOf, toNumber } from './line-reading.ts';

type Facts = { -readonly [K in keyof SessionFacts]: SessionFacts[K] };

/** Takes one property of a session into `facts`; false when the line is none. A repeated one is reported. */
export function buildSessionLine(reading: EntryReading, facts: Facts, line: ast.TrainingLine): boolean {
  const span = spanOf(line);
  const missing = (message: string): void => {
    if (!reading.broken.has(span.line)) reading.report('missing-value', span, message);
  };
  switch (line.$type) {
    case 'EffortLine':
      reportRepeated(reading, facts.efforts, span, 'effort');
      if (line.scores.length === 0) missing('Expected a number from 0 to 10 after effort');
      else facts.efforts = { values: line.scores.map((score) => readScore(reading, score)), span };
      return true;
    case 'LastedLine':
      reportRepeated(reading, facts.lasted, span, 'lasted');
      if (line.times.length === 0) missing('Expected a time after lasted, such as 58 min');
      else {
        const values = line.times.map((entry) => (entry.unrecorded ? undefined : buildDuration(reading, entry.time, 'session')));
        facts.lasted = { values, span } satisfies PerAthlete<number | undefined>;
      }
      return true;
    case 'BodyweightLine': {
      reportRepeated(reading, facts.bodyweight, span, 'bodyweight');
      if (!line.mass) missing('Expected a weight after bodyweight, such as 68.2 kg');
      const mass = buildMass(reading, readLineUnits(line), line.mass, 'bodyGrams');
      if (mass) facts.bodyweight = { mass, span };
      return true;
    }
    case 'SleepLine': {
      reportRepeated(reading, facts.sleep, span, 'sleep');
      if (!line.time) missing('Expected hours after sleep, such as 7 h');
      const seconds = buildDuration(reading, line.time, 'hours');
      if (seconds !== undefined) facts.sleep = { hours: seconds / 3600, span };
      return true;
    }
    case 'ReadinessLine': {
      reportRepeated(reading, facts.readiness, span, 'readiness');
      if (line.score === undefined) missing('Expected a number from 1 to 5 after readiness');
      else if (reading.accept('readiness', toNumber(line.score), span, line.score)) {
        facts.readiness = { score: toNumber(line.score), span };
      }
      return true;
    }
    case 'PainLine':
      if (line.score === undefined) missing('Expected a number from 0 to 10 after pain, and where it hurts');
      else if (reading.accept('pain', toNumber(line.score), span, line.score)) {
        const where = line.where?.$cstNode ? buildName(line.where).text : undefined;
        facts.pains = [...facts.pains, { score: toNumber(line.score), ...(where && { where }), span }];
      }
      return true;
    case 'MissedLine': {
      const reason = line.reason?.$cstNode ? buildName(line.reason).text : undefined;
      facts.missed = { ...(reason && { reason }), span };
      return true;
    }
    default:
      return false;
  }
}

function readScore(reading: EntryReading, score: ast.Score): number | undefined {
  if (score.value === undefined) return undefined;
  const value = toNumber(score.value);
  return reading.accept('effort', value, spanOf(score), textOf(score)) ? value : undefined;
}

export function reportRepeated(reading: EntryReading, before: unknown, span: Span, word: string): void {
  if (before !== undefined) reading.report('repeated-property', span, `${word} stands here twice: the last one counts`);
}
