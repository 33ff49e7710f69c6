import { TreeFragment } from '@lezer/common';
import { parser } from '@lezer/json';
import { createRandom } from './random.ts';

/** Milliseconds for each edit of JSON of about that size by an incremental parser, the tree kept from edit to edit. */
export function measureIncrementalParser(bytes: number, edits: number): number[] {
  const random = createRandom(9);
  let text = writeJson(bytes, random);
  let tree = parser.parse(text);
  let fragments = TreeFragment.addTree(tree);
  const times: number[] = [];
  for (let edit = 0; edit < edits; edit++) {
    const near = random.integer(0, text.length - 200);
    const at = text.indexOf('"reps":', near) + '"reps":'.length;
    text = `${text.slice(0, at)}1${text.slice(at)}`;
    // A text put together from pieces is made whole at its first reading; an editor's buffer needs no such thing.
    text.charCodeAt(at);
    const start = performance.now();
    const kept = TreeFragment.applyChanges(fragments, [{ fromA: at, toA: at, fromB: at, toB: at + 1 }]);
    tree = parser.parse(text, kept);
    fragments = TreeFragment.addTree(tree, kept);
    times.push(performance.now() - start);
    if (tree.length !== text.length) throw new Error('The incremental parser did not read all of the text');
  }
  return times;
}

function writeJson(bytes: number, random: ReturnType<typeof createRandom>): string {
  const records: string[] = [];
  for (let size = 0; size < bytes; ) {
    const record = `{"movement":"Back Squat","sets":${random.integer(1, 5)},"reps":${random.integer(1, 12)},"load":{"value":${random.integer(20, 140)},"unit":"kg"},"warmup":false}`;
    records.push(record);
    size += record.length + 2;
  }
  return `[\n${records.join(',\n')}\n]`;
}
