import type { MovementLine } from '../model/entry.ts';
import type { Fix, Problem } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import { addAfter, replaceBy } from '../reading/line-reading.ts';
import { problem } from './check-context.ts';

interface AddedWord {
  /** Of a whole name: the movement's own is its group. */
  readonly pattern: RegExp;
  /** What stands before the movement's name instead. */
  readonly prefix: string;
  readonly purpose: MovementLine['purpose'];
}

/** Words in a movement's name that say what its sets are for. */
const ADDED_WORDS: readonly AddedWord[] = [
  { pattern: /^warm[\s-]*up\s+(?:sets?\s+)?(.+)$/i, prefix: 'warmup', purpose: 'warmup' },
  {
    pattern: /^(.+?)\s*[-–—(]?\s*\b(?:warm[\s-]*up|w\/?u)(?:\s+sets?)?\s*\)?$/i,
    prefix: 'warmup',
    purpose: 'warmup',
  },
  { pattern: /^(.+?)\s*[-–—(]?\s*\b(?:max\s+)?test\s*\)?$/i, prefix: 'test', purpose: 'test' },
];
const WEEK = /^(.+?)\s*[-–—(]?\s*\b(?:week|wk)\s*(\d{1,2})\s*\)?$/i;
const LOAD = /^(.+?)\s*[-–—(]?\s*(?<![\d.])(\d+(?:\.\d+)?\s*(?:kg|lb)s?)\s*\)?$/i;

/**
 * A line whose name nothing defines, but would without a word or a load that belongs elsewhere on the line. Read as part
 * of the name, for a movement may be called so: only what is defined tells.
 */
export function findAddedWord(line: MovementLine, practice: Practice): Problem | undefined {
  const { text, span } = line.name;
  const isKnown = (name: string | undefined): name is string =>
    name !== undefined && practice.findMovement(name) !== undefined;
  const tell = (advice: string, fixes: (Fix | undefined)[]): Problem =>
    problem('unknown-movement', span, `No movement is called ${text}: ${advice}`, fixes);
  for (const { pattern, prefix, purpose } of ADDED_WORDS) {
    const name = pattern.exec(text)?.[1];
    if (!isKnown(name)) continue;
    const isSaid = line.purpose === purpose;
    const written = isSaid ? name : `${prefix} ${name}`;
    const isOther = !isSaid && line.purpose !== 'work';
    return tell(`the word ${prefix} stands before the name`, [
      isOther ? undefined : replaceBy(span, written),
    ]);
  }
  const [, ofWeek, week] = WEEK.exec(text) ?? [];
  if (isKnown(ofWeek) && line.week === undefined) {
    return tell(`the week stands before the name`, [replaceBy(span, `week ${week} ${ofWeek}`)]);
  }
  const [, loaded, load] = LOAD.exec(text) ?? [];
  if (!isKnown(loaded)) return undefined;
  const fix = moveLoad(line, loaded, load!);
  return tell(`a load stands behind the sets, such as ${loaded}: 5 @ ${load}`, [fix]);
}

/** `Back Squat 60 kg: 5, 5` → `Back Squat: 5, 5 @ 60 kg`; undefined where the sets have other loads, or there are weeks. */
function moveLoad({ cells, name }: MovementLine, movement: string, load: string): Fix | undefined {
  const sets = cells.length === 1 ? cells[0]!.sets : [];
  const last = sets.at(-1);
  if (!last || sets.some((set) => set.ownLoad || set.loadSpan || set.within || set.drops.length > 0))
    return undefined;
  const [{ edits: takeOut }, { edits: add }] = [
    replaceBy(name.span, movement),
    addAfter(last.amountSpan, ` @ ${load}`),
  ];
  return { title: `Write @ ${load} behind the sets`, edits: [...takeOut, ...add] };
}
