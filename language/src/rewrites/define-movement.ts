import { findEntry, listMentions } from '../practice/mentions.ts';
import type { Practice } from '../practice/practice.ts';
import { foldName } from '../text/names.ts';
import { findEquipment } from '../vocabulary/equipment.ts';
import { PATTERNS } from '../vocabulary/movement-words.ts';
import { appendEntry } from './find-lines.ts';
import { findLibraryFile } from './library-file.ts';
import type { RewriteRequest, Rewriter } from './rewrite.ts';

/** An exercise for a movement that nothing defines, in the file that holds most of them, with its lines to fill in. */
export const defineMovement: Rewriter = (request) => {
  const { practice } = request;
  const name = findUnknown(request);
  if (name === undefined) return undefined;
  const uri = findLibraryFile(practice) ?? request.uri;
  const edit = appendEntry(practice.file(uri)!.lines, writeTemplate(practice, name));
  return { title: `Define ${name} from a template`, kind: 'quickfix', edits: [{ ...edit, uri }] };
};

/** The movement at the cursor, else the first of the selected line, that nothing defines: of a line, a max, a goal, … */
function findUnknown({ practice, uri, range: { start } }: RewriteRequest): string | undefined {
  const file = practice.file(uri);
  const placed = file && findEntry(file.model, start.line);
  const unknown = (placed ? listMentions(placed.entry) : []).filter(
    ({ kind, role, key, written: { span } }) =>
      kind === 'movement' &&
      placed!.line + span.line === start.line &&
      (role === 'use' || (role === 'avoided' && !(PATTERNS as readonly string[]).includes(key))) &&
      !practice.findMovement(key),
  );
  const at = unknown.find(
    ({ written: { span } }) => span.start <= start.character && start.character <= span.end,
  );
  return (at ?? unknown.toSorted((a, b) => a.written.span.start - b.written.span.start)[0])?.written.text;
}

/** What the name itself says is written; what only the coach knows is a comment to fill in. */
function writeTemplate(practice: Practice, name: string): string[] {
  const pattern = guessPattern(practice, name);
  const needs = foldName(name)
    .split(' ')
    .flatMap((word) => findEquipment(word)?.name ?? []);
  return [
    `exercise ${name}`,
    pattern === undefined ? `  # pattern ${PATTERNS.join(', ')}` : `  pattern ${pattern}`,
    '  # muscles glutes, hamstrings 1/2',
    needs.length > 0 ? `  needs ${[...new Set(needs)].join(', ')}` : '  # needs barbell, rack',
    '  # cue what you say',
  ];
}

/** The pattern that all known movements have whose names end alike: the longest ending that any has. */
function guessPattern(practice: Practice, name: string): string | undefined {
  const words = foldName(name).split(' ');
  for (let from = 1; from < words.length; from++) {
    const ending = words.slice(from).join(' ');
    const alike = [...practice.allMovements()].filter(
      ({ key }) => key === ending || key.endsWith(` ${ending}`),
    );
    const patterns = new Set(alike.map(({ entry }) => entry.pattern && foldName(entry.pattern.text)));
    if (alike.length > 0) return patterns.size === 1 ? [...patterns][0] : undefined;
  }
  return undefined;
}
