import type { LineKind } from '../syntax/line-kind.ts';
import { scanLine } from '../syntax/line-scanner.ts';
import type { ScannedToken } from '../syntax/scanned-token.ts';
import type { MassUnit } from '../units/mass.ts';
import type { LineContext } from '../vocabulary/keywords.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';

/** One weight on a line, in UTF-16 columns. */
export interface MassAt {
  readonly start: number;
  readonly end: number;
  readonly value: number;
  /** The unit behind it; absent where it takes that of its line or file. */
  readonly unit?: { readonly unit: MassUnit; readonly start: number; readonly end: number };
  /** The unit of the step that it bounds. */
  readonly stepUnit?: MassUnit;
}

/** Properties whose numbers are all weights, but for counts before an x. */
const MASS_PROPERTIES = new Set([
  'bars',
  'plates',
  'collars',
  'dumbbells',
  'kettlebells',
  'stacks',
  'retest',
]);
/** What ends a load beside a comma and a bar. */
const AFTER_LOAD = new Set([',', '|', 'drop', 'rpe', 'rir', 'hr', 'v', 'on', 'by']);

/** All weights that a line writes, whatever they are for: loads, steps, inventories, weigh-ins. */
export function listMasses(text: string, context: LineContext): MassAt[] {
  const { line, tokens } = scanLine(text, context);
  const found: MassAt[] = [];
  let mayBeBare = false;
  let stepUnit: MassUnit | undefined;
  for (const [at, token] of tokens.entries()) {
    const word = token.keyword ?? '';
    if (word === '@' || opensMasses(line, word, at, context)) mayBeBare = true;
    else if (AFTER_LOAD.has(word) && !isMassList(line)) mayBeBare = false;
    if (word === ',' || word === '|') stepUnit = undefined;
    if (token.kind !== 'NUMBER' || !isAmount(tokens, at)) continue;
    const unit = findUnit(tokens, at);
    const mass = { start: token.start, end: token.end, value: toValue(text, token) };
    const isRating = ['rpe', 'rir'].includes(tokens[at + 1]?.keyword ?? '');
    const isBound = stepUnit && unit === undefined && tokens[at - 1]?.keyword === 'to' && !isRating;
    if (unit?.token === 'MASS_UNIT') {
      const { start, end } = unit.at;
      found.push({ ...mass, unit: { unit: unit.unit as MassUnit, start, end } });
      stepUnit = unit.unit as MassUnit;
    } else if (isBound) found.push({ ...mass, stepUnit: stepUnit! });
    else if (unit === undefined && mayBeBare) found.push(mass);
  }
  return found;
}

function opensMasses(line: LineKind, word: string, at: number, context: LineContext): boolean {
  if (line.kind !== 'property') return false;
  if (line.word === 'bodyweight') return at === 0 && context !== 'exercise';
  return isMassList(line) ? at === 0 : line.word === 'max' && word === ':';
}

function isMassList(line: LineKind): boolean {
  return line.kind === 'property' && MASS_PROPERTIES.has(line.word);
}

/** Neither a count (`2x`), nor a pin's number, nor the distance of a pace. */
function isAmount(tokens: readonly ScannedToken[], at: number): boolean {
  const [before, after] = [tokens[at - 1], tokens[at + 1]];
  return after?.kind !== 'TIMES' && before?.keyword !== 'pin' && before?.keyword !== '/';
}

/** The unit that a number has: right behind it, or behind the other end of `20-24 kg` and `24&16 kg`. */
function findUnit(
  tokens: readonly ScannedToken[],
  at: number,
): { readonly token: string; readonly unit: string; readonly at: ScannedToken } | undefined {
  const joined = tokens[at + 1]?.keyword === '-' || tokens[at + 1]?.keyword === '&';
  const next = joined && tokens[at + 2]?.kind === 'NUMBER' ? tokens[at + 3] : tokens[at + 1];
  if (!next) return undefined;
  const word = next.keyword ?? '';
  const known = next.kind === 'WORD' ? UNIT_WORDS.get(word) : undefined;
  if (known) return { ...known, at: next };
  return ['%', 'cm', 'w', 'rep', 'reps', 'set', 'sets'].includes(word)
    ? { token: 'other', unit: word, at: next }
    : undefined;
}

function toValue(text: string, { start, end }: ScannedToken): number {
  return Number(text.slice(start, end).replace(',', '.'));
}
