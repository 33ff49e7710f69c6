import { findBrokenRule } from '../checks/check-name-rules.ts';
import type { Entry } from '../model/entry.ts';
import { findLineSlip } from '../reading/line-slips/find-line-slip.ts';
import { scanLine } from '../syntax/line-scanner.ts';
import { foldName } from '../text/names.ts';
import { shorten } from '../text/shorten.ts';
import { PATTERNS } from '../vocabulary/movement-words.ts';
import { findMention, type Mention, type NamedKind } from './mentions.ts';
import type { Practice } from './practice.ts';
import { findDefinitions, findSpelt, type Reference } from './references.ts';

/** Why a name cannot be changed, as a sentence for the coach. */
export interface Refusal {
  readonly refused: string;
}

/** A name that may be changed, and where it stands: `line` counts from the file's first. */
export interface Renameable {
  readonly mention: Mention;
  readonly line: number;
}

/** The new name at every place that bears the old one now. */
export interface Renaming {
  readonly newName: string;
  readonly places: readonly Reference[];
}

const PATTERN_KEYS: ReadonlySet<string> = new Set(PATTERNS.map(foldName));

/** What could be renamed at a place of a file; undefined where no name stands. */
export function startRename(
  practice: Practice,
  uri: string,
  line: number,
  column: number,
): Renameable | Refusal | undefined {
  const file = practice.file(uri);
  const found = file && findMention(file.model, line, column);
  if (!found) return undefined;
  const { kind, written, key, role } = found.mention;
  if (role === 'avoided' && PATTERN_KEYS.has(key) && !practice.findMovement(key))
    return {
      refused: `${written.text} is a pattern: only movements, athletes, places and plans can be renamed`,
    };
  const [definition] = findDefinitions(practice, kind, key);
  if (definition && 'builtIn' in definition && definition.builtIn) {
    const advice = `define one of your own: "exercise" and its name, then "also ${written.text}"`;
    return { refused: `${written.text} is built in and keeps its name. To call it otherwise, ${advice}` };
  }
  return { mention: found.mention, line };
}

/**
 * Renames what stands at a place, wherever it is spelt so: another spelling (`also`) keeps its own places. Refused
 * where the new name breaks the rules of names, stands for something else already, or could not be told from the rest
 * of a line that would hold it.
 */
export function rename(
  practice: Practice,
  uri: string,
  line: number,
  column: number,
  wanted: string,
): Renaming | Refusal | undefined {
  const start = startRename(practice, uri, line, column);
  if (!start || 'refused' in start) return start;
  const { kind, key } = start.mention;
  const newName = wanted.normalize('NFC').replace(/\s+/g, ' ').trim();
  const places = findSpelt(practice, kind, [key]);
  const refused =
    describeBrokenRule(kind, newName) ??
    describeCollision(practice, kind, key, newName) ??
    describeMisreading(practice, places, newName);
  return refused === undefined ? { newName, places } : { refused };
}

function describeBrokenRule(kind: NamedKind, newName: string): string | undefined {
  if (newName === '') return 'A name has at least two letters';
  const entryKind = kind === 'movement' ? 'exercise' : kind;
  return findBrokenRule({ text: newName, span: { line: 0, start: 0, end: newName.length } }, entryKind)
    ?.message;
}

/** A name that only changes its capitals or hyphens is the same name. */
function describeCollision(
  practice: Practice,
  kind: NamedKind,
  key: string,
  newName: string,
): string | undefined {
  const newKey = foldName(newName);
  if (newKey === key) return undefined;
  if (kind === 'movement' && PATTERN_KEYS.has(newKey))
    return `${newName} is a pattern, so avoid could not tell the two apart: choose another name`;
  // A name that nothing defines is a slip or a stranger: it may be corrected into one that is known.
  if (findDefinitions(practice, kind, key).length === 0) return undefined;
  const [taken] = findDefinitions(practice, kind, newName);
  if (taken) {
    const builtIn = 'builtIn' in taken && taken.builtIn;
    const where = builtIn ? 'is built in' : `is defined in ${printPlace(taken.uri, taken.line)}`;
    const spelling = taken.key === newKey ? '' : ` as another spelling of ${taken.name}`;
    return `${newName} ${where}${spelling}: choose another name`;
  }
  const [used] = findSpelt(practice, kind, [newKey]);
  return used
    ? `${newName} is written in ${printPlace(used.uri, used.line)} without being defined, and would be taken for this ${kind}: rename it there first`
    : undefined;
}

/** Reads every line again as it would be: all but the name must be cut as before. */
function describeMisreading(
  practice: Practice,
  places: readonly Reference[],
  newName: string,
): string | undefined {
  const byLine = new Map<string, Reference[]>();
  for (const place of places) {
    const key = `${place.line} ${place.uri}`;
    byLine.set(key, [...(byLine.get(key) ?? []), place]);
  }
  for (const inLine of byLine.values()) {
    const { uri, line } = inLine[0]!;
    const file = practice.file(uri)!;
    const { entry } = file.model.entries.findLast((placed) => placed.line <= line)!;
    if (isReadAlike(entry, file.lines[line]!, inLine, newName)) continue;
    return `In ${printPlace(uri, line)}, ${shorten(newName)} could not be told from the rest of the line: choose another name`;
  }
  return undefined;
}

function isReadAlike({ kind }: Entry, text: string, inLine: readonly Reference[], newName: string): boolean {
  const starts = new Set(inLine.map(({ span }) => span.start));
  let changed = text;
  for (const { span } of inLine.toSorted((a, b) => b.span.start - a.span.start))
    changed = changed.slice(0, span.start) + newName + changed.slice(span.end);
  const before = scanLine(text, kind);
  const after = scanLine(changed, kind);
  const expected = before.tokens.map(
    (token) => `${token.kind} ${starts.has(token.start) ? newName : text.slice(token.start, token.end)}`,
  );
  const actual = after.tokens.map((token) => `${token.kind} ${changed.slice(token.start, token.end)}`);
  const isCutAlike = before.line.kind === after.line.kind && expected.join('\n') === actual.join('\n');
  // `Note: 5` and `Ann and Bo` in a header are cut as any name, and mean something else.
  const [wasSlip, isSlip] = [text, changed].map((line) => findLineSlip(line, kind, 0, false) !== undefined);
  if (isCutAlike && (wasSlip || !isSlip)) return true;
  return isMeantAlike(kind, text, changed, inLine, newName);
}

/** Of a slip that is read as it is meant, what is meant must be the same with the new name. */
function isMeantAlike(
  kind: Entry['kind'],
  text: string,
  changed: string,
  inLine: readonly Reference[],
  newName: string,
): boolean {
  const [before, after] = [text, changed].map((line) => findLineSlip(line, kind, 0)?.meant);
  const names = new Set(inLine.map(({ span }) => text.slice(span.start, span.end)));
  let expected = before;
  for (const name of names) expected = expected?.replaceAll(name, newName);
  return expected !== undefined && expected === after;
}

/** `saturday.plim, line 12`. */
function printPlace(uri: string, line: number): string {
  return `${decodeURIComponent(uri.slice(uri.lastIndexOf('/') + 1))}, line ${line + 1}`;
}
