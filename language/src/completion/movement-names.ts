import { toDayNumber } from '../calendar/iso-date.ts';
import { listLines } from '../checks/check-context.ts';
import { listLacking } from '../checks/inventory.ts';
import { CIRCUIT_KINDS } from '../circuits/circuit.ts';
import { printComplement } from '../circuits/print-circuit.ts';
import { suggestComplements } from '../circuits/suggest-complements.ts';
import type { AthleteEntry, MovementLine } from '../model/entry.ts';
import type { Movement } from '../practice/movement.ts';
import { printDay } from '../summaries/words.ts';
import { shorten } from '../text/shorten.ts';
import { findHistory, findLast, listUndefined, readWritten, scoreRecent } from './history.ts';
import { foldFilterText, mayBecome, type Offer } from './item.ts';
import { findPlannedDay } from './planned-line.ts';
import { findSpotPlace, listTrainees, type Spot, type Trainee } from './spot.ts';

/** A movement's name among others. */
export interface NamedMovement extends Offer {
  /** Planned, done lately or ever: what an athlete is likely to do comes before what can be done at all. */
  readonly isFamiliar: boolean;
  /** The plan tests its max on that day, which a line without the word `test` would not record. */
  readonly isTested: boolean;
}

/** Ranks, the most likely first. */
const RANKS = [
  'next',
  'planned',
  'recent',
  'complement',
  'done',
  'written',
  'own',
  'built in',
  'lacking',
  'avoided',
] as const;
type Rank = (typeof RANKS)[number];

/**
 * All movements by their likelihood on this line: what the line above warmed up for, what the plan asks today, what
 * this athlete did lately, in a circuit what would go well with it, what was done ever, and then the others. What the place has not the equipment for, and what the athlete
 * is to avoid, comes last and says so: it informs and never forbids. Only of those that the typed text may become is
 * anything looked up.
 */
export function listMovements(spot: Spot, typed = '', isPreparation = false): NamedMovement[] {
  const { practice } = spot;
  const fits = mayBecome(typed);
  const trainees = listTrainees(spot);
  const [first] = trainees;
  const history = first && findHistory(practice, first);
  const scores = history && scoreRecent(practice, history, spot.block?.kind, isPreparation);
  const planned = listPlanned(spot, isPreparation);
  const written = listWritten(spot);
  const next = findNext(spot);
  const place = findSpotPlace(spot);
  const complements = isPreparation ? new Map<string, string>() : listComplements(spot);
  const complementOrder = [...complements.keys()];
  const avoided = trainees.flatMap((trainee) => listAvoided(spot, trainee));
  const offers: { offer: NamedMovement; rank: number; score: number; order: number }[] = [];
  let order = 0;
  const add = (key: string, name: string, movement: Movement | undefined): void => {
    if (!fits(movement ? foldSpellings(movement) : foldFilterText({ label: name }))) return;
    const last = history && findLast(history, key, isPreparation);
    const lacking = movement && place ? listLacking(place.entry, movement) : [];
    const avoid =
      movement &&
      avoided.find(
        ({ keys }) => keys.has(key) || (patternOf(spot, movement) && keys.has(patternOf(spot, movement)!)),
      );
    const score = scores?.get(key) ?? 0;
    const isDone = written.has(key) && !(key === next);
    const rank: Rank = avoid
      ? 'avoided'
      : lacking.length > 0
        ? 'lacking'
        : key === next
          ? 'next'
          : isDone
            ? 'written'
            : planned.has(key)
              ? 'planned'
              : score > 0
                ? 'recent'
                : complements.has(key)
                  ? 'complement'
                  : last
                    ? 'done'
                    : movement?.builtIn
                      ? 'built in'
                      : 'own';
    const done =
      last && `${printDay(last.record.date, first!.date)}: ${shorten(readWritten(practice, last))}`;
    const detail = avoid
      ? avoid.text
      : lacking.length > 0
        ? `${place!.name} has no ${lacking.join(', ')}`
        : [isDone ? undefined : describePlanned(planned.get(key)), done, complements.get(key)]
            .filter(Boolean)
            .join(' · ');
    offers.push({
      offer: {
        label: name,
        kind: 'movement',
        detail: detail || movement?.entry.pattern?.text,
        words: movement && describeMovement(movement),
        also: movement ? listOther(movement) : [],
        isWarned: rank === 'lacking' || rank === 'avoided',
        isFamiliar: RANKS.indexOf(rank) <= RANKS.indexOf('done'),
        isTested: !isDone && planned.get(key)?.isTest === true,
      },
      rank: RANKS.indexOf(rank),
      score:
        rank === 'planned'
          ? -planned.get(key)!.order
          : rank === 'complement'
            ? -complementOrder.indexOf(key)
            : rank === 'done'
              ? last!.record.day
              : score,
      order: order++,
    });
  };
  for (const movement of practice.allMovements()) add(movement.key, movement.name, movement);
  // What is done and not defined anywhere is still a movement of this athlete.
  for (const [key, { line }] of history ? listUndefined(practice, first.athlete, history) : [])
    if (!offers.some(({ offer }) => offer.label === line.name.text)) add(key, line.name.text, undefined);
  return offers
    .sort((a, b) => a.rank - b.rank || b.score - a.score || a.order - b.order)
    .map(({ offer }) => offer);
}

function listOther({ entry }: Movement): string[] {
  return entry.also.map(({ text }) => text);
}

const foldedByMovement = new WeakMap<Movement, string>();

/** A movement's spellings as the typed text is compared with them; remembered, since all are asked at each keystroke. */
function foldSpellings(movement: Movement): string {
  const known = foldedByMovement.get(movement);
  if (known !== undefined) return known;
  const folded = foldFilterText({ label: movement.name, also: listOther(movement) });
  foldedByMovement.set(movement, folded);
  return folded;
}

const COMPLEMENTS_OFFERED = 3;

/** What would go well with a circuit that has a line already, by key, with the facts that speak for it. */
function listComplements({ practice, placed, block, lineNumber }: Spot): ReadonlyMap<string, string> {
  const entry = placed?.entry;
  if (!block || !CIRCUIT_KINDS.has(block.kind) || (entry?.kind !== 'session' && entry?.kind !== 'plan'))
    return new Map();
  const lines = block.lines.filter(({ span }) => placed!.line + span.line !== lineNumber);
  const found = suggestComplements(practice, entry, { ...block, lines }, COMPLEMENTS_OFFERED);
  return new Map(found.map((each) => [each.movement.key, printComplement(each)] as const));
}

interface Planned {
  /** Its place in the plan's day. */
  readonly order: number;
  readonly isTest: boolean;
}

/** What the plan asks today, by key. */
function listPlanned(spot: Spot, isPreparation: boolean): ReadonlyMap<string, Planned> {
  const lines = findPlannedDay(spot)?.blocks.flatMap(({ lines }) => lines) ?? [];
  const planned = new Map<string, Planned>();
  for (const { purpose, name } of lines) {
    const key = spot.practice.keyOf(name.text);
    if ((purpose === 'warmup') === isPreparation && !planned.has(key))
      planned.set(key, { order: planned.size, isTest: purpose === 'test' });
  }
  return planned;
}

function describePlanned(planned: Planned | undefined): string | undefined {
  return planned && (planned.isTest ? 'a test planned today' : 'planned today');
}

function listOtherLines({ placed, lineNumber }: Spot): MovementLine[] {
  if (!placed) return [];
  return listLines(placed.entry)
    .map(({ line }) => line)
    .filter(({ span }) => placed.line + span.line !== lineNumber);
}

/** Keys of the working lines that the session has already. */
function listWritten(spot: Spot): ReadonlySet<string> {
  const working = listOtherLines(spot).filter(({ purpose }) => purpose !== 'warmup');
  return spot.context === 'plan'
    ? new Set()
    : new Set(working.map(({ name }) => spot.practice.keyOf(name.text)));
}

/** The movement of a warm-up line right above: its working sets come next. */
function findNext(spot: Spot): string | undefined {
  const above = listOtherLines(spot).find(
    ({ span }) => spot.placed!.line + span.line === spot.lineNumber - 1,
  );
  return above?.purpose === 'warmup' ? spot.practice.keyOf(above.name.text) : undefined;
}

interface Avoided {
  /** Keys of movements, and of patterns. */
  readonly keys: ReadonlySet<string>;
  readonly text: string;
}

function listAvoided({ practice }: Spot, { athlete, day }: Trainee): Avoided[] {
  const entry: AthleteEntry | undefined = practice.findAthlete(athlete)?.entry;
  return (entry?.avoid ?? [])
    .filter(({ until }) => until === undefined || toDayNumber(until) >= day)
    .map(({ what, until, reason }) => ({
      keys: new Set([practice.keyOf(what.text)]),
      text: `to avoid${until ? ` until ${until}` : ''}${reason ? `, ${reason}` : ''}`,
    }));
}

function patternOf({ practice }: Spot, { entry }: Movement): string | undefined {
  return entry.pattern && practice.keyOf(entry.pattern.text);
}

/** What a coach says of it, the caution first. */
function describeMovement({ entry }: Movement): string | undefined {
  const [caution, cue] = [entry.cautions[0], entry.cues[0]];
  return (
    [caution && `Caution: ${caution.text}`, cue && `Cue: ${cue.text}`].filter(Boolean).join('\n') || undefined
  );
}
