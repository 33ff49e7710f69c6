import { countRounds } from '../measures/expand-sets.ts';
import { printWrittenMass } from '../printing/print-load.ts';
import { printPlain } from '../printing/print-quantity.ts';
import { findHistory } from './history.ts';
import type { Offer } from './item.ts';
import { listTrainees, type Spot } from './spot.ts';

/** The scale's own words; 6, 8 and 9 have none. Foster C et al. (2001) J Strength Cond Res 15(1):109-115, from memory. */
const EFFORTS: Readonly<Record<number, string>> = {
  0: 'rest',
  1: 'very, very easy',
  2: 'easy',
  3: 'moderate',
  4: 'somewhat hard',
  5: 'hard',
  7: 'very hard',
  10: 'maximal',
};

const LIKELY_EFFORTS = [7, 6, 8, 5, 4, 9, 3, 10, 2, 1, 0];

/** Values of a session's properties, and of what is recorded of a block. */
export function listSessionValues(spot: Spot, word: string, words: readonly string[]): readonly Offer[] {
  const { block, placed } = spot;
  const value = (label: string, detail?: string): Offer => ({ label, kind: 'value', detail });
  const isStart = words.length === 0 || words.at(-1) === '|';
  switch (word) {
    case 'effort':
      return isStart ? LIKELY_EFFORTS.map((effort) => value(String(effort), EFFORTS[effort])) : [];
    case 'lasted':
      return isStart ? listDurations(spot) : [];
    case 'bodyweight':
      return words.length === 0 ? listBodyweights(spot) : [];
    case 'sleep':
      return words.length === 0 ? ['7 h', '8 h', '6 h', '7.5 h', '6.5 h'].map((label) => value(label)) : [];
    case 'readiness':
      return words.length === 0
        ? ['3', '4', '2', '5', '1'].map((label) => value(label, READINESS[label]))
        : [];
    case 'pain':
      return words.length === 0
        ? Array.from({ length: 11 }, (_, score) =>
            value(String(score), score >= 4 ? 'ask a licensed practitioner' : undefined),
          )
        : [];
    case 'time': {
      const rounds = block ? countRounds(block) : undefined;
      const athletes = placed?.entry.kind === 'session' ? Math.max(1, placed.entry.athletes.length) : 1;
      if (words.length > 0 || rounds === undefined || rounds > 20) return [];
      const one = Array(rounds).fill('?').join(', ');
      return [value(Array(athletes).fill(one).join(' | '), `${rounds} rounds; ? is one not timed`)];
    }
    case 'done':
      return words.length === 0 ? listResults(spot) : [];
    case 'rest':
      return words.length === 0 ? ['1:00', '1:30', '0:30', '2:00'].map((label) => value(label)) : [];
    default:
      return [];
  }
}

const READINESS: Readonly<Record<string, string>> = {
  1: 'not ready at all',
  2: 'less than usual',
  3: 'as usual',
  4: 'better than usual',
  5: 'very ready',
};

function listDurations(spot: Spot): Offer[] {
  const [trainee] = listTrainees(spot);
  const recent = trainee ? findHistory(spot.practice, trainee).recent : [];
  const minutes = recent.flatMap(({ entry, index }) => {
    const seconds = entry.lasted?.values[entry.lasted.values.length === 1 ? 0 : index];
    return seconds === undefined ? [] : [Math.round(seconds / 60)];
  });
  const offered = [...new Set([...minutes, 45, 60, 30, 75, 90])].slice(0, 10);
  return offered.map((number) => ({
    label: `${number} min`,
    kind: 'value',
    ...(minutes.includes(number) && { detail: 'as lately' }),
  }));
}

function listBodyweights(spot: Spot): Offer[] {
  const [trainee] = listTrainees(spot);
  const recent = trainee ? findHistory(spot.practice, trainee).recent : [];
  const logged = recent.find(({ entry, groupSize }) => entry.bodyweight && groupSize === 1);
  const defined = trainee && spot.practice.findAthlete(trainee.athlete)?.entry.weighIns.at(-1);
  const mass = logged?.entry.bodyweight?.mass ?? defined?.mass;
  const date = logged?.date ?? defined?.date;
  return mass ? [{ label: printWrittenMass(mass), kind: 'value', detail: `as on ${date}` }] : [];
}

/** How a block of that kind may have ended. */
function listResults({ block }: Spot): Offer[] {
  const rounds = block?.rounds;
  const value = (label: string, detail: string): Offer => ({ label, kind: 'value', detail });
  if (block?.kind === 'amrap')
    return [value('5 rounds', 'whole rounds'), value('5 rounds + 4', 'and reps of the next')];
  return [
    ...(block?.kind === 'for time' ? [value('in 10:00', 'the time that it took')] : []),
    ...(rounds !== undefined && rounds > 1
      ? [value(`${printPlain(rounds - 1)} of ${printPlain(rounds)} rounds`, 'ended early')]
      : []),
  ];
}
