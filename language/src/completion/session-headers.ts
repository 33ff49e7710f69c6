import { addDays, type IsoDate, toDayNumber } from '../calendar/iso-date.ts';
import { findNextTurn, type NextTurn } from '../plans/next-turn.ts';
import type { Plan } from '../practice/athlete.ts';
import type { Practice } from '../practice/practice.ts';
import { foldName } from '../text/names.ts';
import { listPastDates, offerDate } from './dates.ts';
import type { Offer, Offers } from './item.ts';
import { endOfWord, restAfter, type Spot } from './spot.ts';

/** At most so many athletes have a whole header of their own. */
const MOST_HEADERS = 6;
/** So many of a file's last entries tell whose file it is. */
const LAST_ENTRIES = 100;

/**
 * The next session of each athlete, those of this file first: `session 2026-11-24 Name at Place, Plan week 3 day 2`,
 * on the first day from today on that has none yet, at the place of the last one, with the plan's next day.
 */
export function listSessionHeaders(spot: Spot): Offer[] {
  const { practice, options } = spot;
  const keys = listAthletes(spot);
  if (keys.length === 0) return [{ label: `session ${options.today}`, kind: 'header' }];
  return keys.slice(0, MOST_HEADERS).map((key): Offer => {
    const date = findFreeDay(practice, key, options.today);
    const { text, plan } = describeSession(practice, key, date);
    return {
      label: `session ${date}${text}`,
      kind: 'header',
      detail: plan ? `next day of ${plan}` : offerDate(date, options.today).detail,
    };
  });
}

/** Athletes by how likely their next session is: those of this file by their last session in it, then the others. */
function listAthletes({ practice, uri }: Spot): string[] {
  const entries = practice.file(uri)?.model.entries ?? [];
  const keys = new Set<string>();
  for (const { entry } of entries.slice(-LAST_ENTRIES).reverse()) {
    if (entry.kind === 'session') {
      const names = entry.athletes.map(({ text }) => foldName(text));
      if (names.length === 1) keys.add(practice.resolveAthlete(names[0]!));
      if (names.length === 0 && practice.resolveAthlete('')) keys.add(practice.resolveAthlete(''));
    } else if (entry.kind === 'athlete' && entry.name) keys.add(foldName(entry.name.text));
    if (keys.size >= MOST_HEADERS) break;
  }
  for (const { key } of practice.allAthletes()) keys.add(key);
  return [...keys];
}

function findFreeDay(practice: Practice, athlete: string, today: IsoDate): IsoDate {
  const taken = new Set(
    practice
      .sessionsOf(athlete)
      .slice(-60)
      .map(({ date }) => date),
  );
  let date = today;
  while (taken.has(date)) date = addDays(date, 1);
  return date;
}

/** ` Name at Place, Plan week 3 day 2`; the name is left out where nobody needs it. */
function describeSession(
  practice: Practice,
  athlete: string,
  date: IsoDate,
): { text: string; plan?: string } {
  const name = practice.athleteName(athlete);
  const next = findNextTurn(practice, athlete, toDayNumber(date));
  const lastPlace = practice
    .sessionsOf(athlete)
    .findLast(({ day, entry }) => day <= toDayNumber(date) && entry.place)?.entry.place?.text;
  const place = next?.plan.entry.place?.text ?? lastPlace;
  const who = name === '' ? '' : ` ${name}`;
  const where = place === undefined ? '' : ` at ${place}`;
  if (!next) return { text: `${who}${where}` };
  return { text: `${who}${where}, ${printTurn(next)}`, plan: next.plan.name };
}

/** `Low Tide week 2 day 1`. */
function printTurn({ plan, turn }: NextTurn): string {
  return `${plan.name} week ${turn.week} day ${turn.day.number}`;
}

/** Within a session's header: its date, its athletes, its place, its plan and that plan's week and day. */
export function completeSessionHeader(spot: Spot): Offers | undefined {
  const { practice, tokens, typing, options } = spot;
  const start = typing?.start ?? spot.column;
  const last = tokens.at(-1);
  const words = tokens.map(({ keyword, kind }) => keyword ?? kind);
  const end = findNameEnd(spot);
  const behind = restAfter(spot, end);
  const isApart = /\s/.test(spot.line[start - 1] ?? '');
  const at = (offers: readonly Offer[], mayFollow: RegExp): Offers | undefined => {
    if (!mayFollow.test(behind)) return undefined;
    const lead = isApart ? '' : ' ';
    return {
      start,
      end,
      offers: offers.map((offer) => ({ ...offer, insert: lead + (offer.insert ?? offer.label) })),
    };
  };
  if (last?.keyword === 'session') {
    const dates = listPastDates(options.today);
    const tomorrow = offerDate(addDays(options.today, 1), options.today);
    const whole = behind === '' ? listSessionHeaders(spot).map(withoutWord) : [];
    const isDate = typing !== undefined && /^\d/.test(spot.line.slice(start));
    if (typing && !isDate && typing.kind !== 'NAME') return undefined;
    return at([...whole, ...dates, tomorrow], behind === '' || isDate ? /^/ : /^[\p{L}|]/u);
  }
  const comma = words.lastIndexOf(',');
  if (comma >= 0) return completePlanDay(spot, tokens[comma]!.end);
  const isBehindPlace = words.includes('at');
  if (last?.keyword === 'at') return at(listPlaces(practice), /^(?:$|,)/);
  if (last?.kind === 'NAME' && !typing) return behind === '' ? behindName(spot, isBehindPlace) : undefined;
  const isNameDue = last?.keyword === '|' || last?.kind === 'DATE' || last?.kind === 'TIME';
  if (isBehindPlace || !isNameDue) return undefined;
  const used = new Set(
    tokens
      .filter(({ kind }) => kind === 'NAME')
      .map((token) => foldName(spot.line.slice(token.start, token.end))),
  );
  const names = practice.allAthletes().filter(({ key }) => !used.has(key));
  const offers: Offer[] = names.map(({ name }) => ({ label: name, kind: 'athlete' }));
  if (last?.keyword !== '|' && !typing && !/^at\b/i.test(behind))
    offers.push({ label: 'at', kind: 'keyword', insert: 'at ', continues: true });
  return at(offers, /^(?:$|[,|]|at\b)/);
}

/** Behind a whole name: the place and the plan as last time, or their words alone. */
function behindName(spot: Spot, isBehindPlace: boolean): Offers {
  const { practice, placed, options, line } = spot;
  const entry = placed?.entry.kind === 'session' ? placed.entry : undefined;
  const athlete = practice.resolveAthlete(foldName(entry?.athletes[0]?.text ?? ''));
  const date = entry?.date?.date ?? options.today;
  const { text } = describeSession(practice, athlete, date);
  const [, place, plan] =
    / (at [^,]+)?(?:, (.+))?$/.exec(text.slice(practice.athleteName(athlete).length)) ?? [];
  const offers: Offer[] = [];
  const comma = { label: ', plan', kind: 'keyword', insert: ', ', continues: true } as const;
  if (isBehindPlace) {
    if (plan) offers.push({ label: `, ${plan}`, kind: 'plan', detail: 'the next day' });
    else if (practice.allPlans().length > 0) offers.push(comma);
  } else {
    const whole = [place, plan].filter(Boolean).join(', ');
    if (whole) offers.push({ label: whole, kind: 'place', detail: 'as last time' });
    offers.push({ label: 'at', kind: 'keyword', insert: 'at ', continues: true });
    if (practice.allAthletes().length > 1)
      offers.push({ label: '|', kind: 'keyword', detail: 'one more athlete', insert: '| ', continues: true });
  }
  const name = line.slice(0, spot.column).trimEnd().length;
  // A comma is set right behind the name, in place of the space before the cursor.
  return isBehindPlace
    ? { start: name, end: spot.column, offers }
    : { start: spot.column, end: spot.column, offers };
}

function withoutWord(offer: Offer): Offer {
  return { ...offer, label: offer.label.replace(/^session /, '') };
}

export function listPlaces(practice: Practice): Offer[] {
  return practice.allPlaces().map(({ name }) => ({ label: name, kind: 'place' }));
}

/** The plan, its week and its day, behind the comma of the header. */
function completePlanDay(spot: Spot, behindComma: number): Offers | undefined {
  const { practice, before, line, column } = spot;
  const written = before.slice(behindComma);
  const end = endOfWord(spot);
  const at = (start: number, offers: readonly Offer[], mayFollow: RegExp): Offers | undefined =>
    mayFollow.test(restAfter(spot, end)) ? { start, end, offers } : undefined;
  // A number is due behind a word that no number follows yet: to the scanner that is still a name.
  const due = /^(.*?)\s(?:week\s+\d+\s+)?(week|day)\s+(\d*)$/i.exec(written);
  if (due) {
    const [, name, word, number] = due as unknown as [string, string, string, string];
    const plan = practice.findPlan(name);
    const isWeek = word.toLowerCase() === 'week';
    const values = isWeek ? listWeeks(plan) : (plan?.entry.days ?? []).map(toDayOffer);
    return at(column - number.length, values, isWeek ? /^(?:$|day\b)/i : /^$/);
  }
  const known = /^(.*?)(?:\s+week\s+(\d+))?\s+([a-z]*)$/i.exec(written);
  if (known && practice.findPlan(known[1]!)) {
    const offers = known[2] === undefined ? ['week', 'day'] : ['day'];
    return at(column - known[3]!.length, offers.map(toWord), /^$/);
  }
  // What stands of the plan's name behind the cursor goes with it.
  const more = /^.*?(?=\s+(?:week|day)\s+\d|\s*$|\s+#)/i.exec(line.slice(column))?.[0] ?? '';
  const begin = behindComma + /^\s*/.exec(written)![0].length;
  if (begin === column && more.trim() !== '') return undefined;
  const lead = begin === behindComma ? ' ' : '';
  const plans = practice.allPlans().map(({ name }): Offer => ({ label: name, kind: 'plan' }));
  const offers = [...(restAfter(spot, column) === '' ? listNextDay(spot) : []), ...plans];
  return {
    start: begin,
    end: column + more.length,
    offers: offers.map((offer) => ({ ...offer, insert: lead + offer.label })),
  };
}

function listNextDay({ practice, placed, options }: Spot): Offer[] {
  const entry = placed?.entry.kind === 'session' ? placed.entry : undefined;
  const athlete = practice.resolveAthlete(foldName(entry?.athletes[0]?.text ?? ''));
  const next = findNextTurn(practice, athlete, toDayNumber(entry?.date?.date ?? options.today));
  if (!next) return [];
  return [{ label: printTurn(next), kind: 'plan', detail: 'the next day' }];
}

function listWeeks(plan: Plan | undefined): Offer[] {
  const count = plan?.entry.weeks?.count ?? 0;
  return Array.from({ length: count }, (_, index) => ({ label: String(index + 1), kind: 'value' }));
}

function toDayOffer({ number, name }: Plan['entry']['days'][number]): Offer {
  return { label: String(number), kind: 'value', detail: name };
}

function toWord(label: string): Offer {
  return { label, kind: 'keyword', insert: `${label} `, continues: true };
}

/** The end of the name or number that the cursor is in. */
function findNameEnd({ line, column, typing }: Spot): number {
  if (!typing) return column;
  const stop = line.slice(column).search(/[,|#]|(?:^|\s)at(?=\s|$)|\s(?:week|day)\s+\d|$/i);
  const isNumber = typing.kind !== 'NAME';
  const end = isNumber ? column + /^[\d-]*/.exec(line.slice(column))![0].length : column + stop;
  return column + line.slice(column, end).trimEnd().length;
}
