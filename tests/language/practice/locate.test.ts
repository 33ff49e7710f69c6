import { locate } from '@plimsoll/language/practice/locate';
import { expect, test } from 'vitest';
import { readWhole } from '../support/read-text.ts';

/** `movement Back Squat`, `word tempo`: what is at the cursor of the text, and the text of its place. */
function locateCursor(marked: string): string | undefined {
  const [before, after] = marked.split('<|>') as [string, string];
  const { model, lines } = readWhole(before + after);
  const line = before.split('\n').length - 1;
  const found = locate(model, line, before.length - before.lastIndexOf('\n') - 1);
  if (!found) return undefined;
  const text = lines[found.placed.line + found.span.line]!.slice(found.span.start, found.span.end).trim();
  const detail = 'word' in found ? ` ${found.word}` : '';
  return `${found.kind}${detail}: ${text}`;
}

const session = (line: string) => `\nsession 2026-11-03 Ann Vell\n${line}\n`;

test.each([
  ['at the beginning of a name', session('  <|>Back Squat: 5 @ 60 kg'), 'movement: Back Squat'],
  ['right behind a name', session('  Back Squat<|>: 5 @ 60 kg'), 'movement: Back Squat'],
  ['in a count', session('  Back Squat: 3<|>x5 @ 60 kg'), undefined],
  ['in an amount', session('  Back Squat: 3x<|>5 @ 60 kg'), 'amount: 5'],
  ['between load and rating', session('  Back Squat: 5 @ 60 kg <|>rpe 8'), 'rating: rpe 8'],
  ['right behind a load', session('  Back Squat: 5 @ 60 kg<|> rpe 8'), 'load: 60 kg'],
  ['in a drop', session('  Dip: 5 @ bw+10 kg drop <|>5 @ bw'), 'load: drop 5 @ bw'],
  ['in a modifier', session('  Dip: 5, pa<|>in 3 left knee'), 'word pain: pain 3 left knee'],
  [
    'in a movement within a modifier',
    session('  Dip: 5, instead of Bench<|> Press'),
    'movement: Bench Press',
  ],
  ['in a prefix', session('  wa<|>rmup Dip: 5'), 'word warmup: warmup'],
  ['in a label', session('  A<|>1 Dip: 5'), 'word label: A1'],
  [
    'in a header word',
    'ses<|>sion 2026-11-03 Ann Vell at Loft',
    'word session: session 2026-11-03 Ann Vell at Loft',
  ],
  ['in a date', 'session 2026-11<|>-03 Ann Vell at Loft', 'date: 2026-11-03'],
  ['right behind a date', 'session 2026-11-03<|> Ann Vell', 'date: 2026-11-03'],
  ['in an athlete', 'session 2026-11-03 Ann <|>Vell at Loft', 'athlete: Ann Vell'],
  ['in a place', 'session 2026-11-03 Ann Vell at Lo<|>ft', 'place: Loft'],
  ['in a plan', 'session 2026-11-03 Ann Vell, Eb<|>b week 1 day 1', 'plan: Ebb'],
  ['in a block', session('  B cir<|>cuit, 3 rounds'), 'word circuit: B circuit, 3 rounds'],
  ['in a time', session('  B circuit, 3 rounds\n    Dip: 5\n    time 2:<|>55'), 'word time: time 2:55'],
  ['in a note', session('  > Gr<|>ip went'), 'word note: > Grip went'],
  ['in a value', 'exercise Dip Twice\n  muscles tri<|>ceps, chest 1/2', 'term muscles: triceps'],
  ['in the word before it', 'exercise Dip Twice\n  mus<|>cles triceps', 'word muscles: muscles triceps'],
  ['in an easier movement', 'exercise Dip Twice\n  easier Push-<|>up', 'movement: Push-up'],
  ['in what to avoid', 'athlete Ann Vell\n  avoid D<|>ip until 2026-12-01', 'avoided: Dip'],
  ['in the movement of a max', 'athlete Ann Vell\n  max Back<|> Squat: 60 kg', 'movement: Back Squat'],
  [
    "in a percentage's movement",
    'plan Ebb\n  day 1\n    Dip: 5 @ 70% of Bench<|> Press',
    'movement: Bench Press',
  ],
  ['in a date of a plan', 'plan Ebb\n  starts 2026-11-<|>02', 'date: 2026-11-02'],
  ['in an unknown entry', 'sesion 2026-11-03\n  Di<|>p: 5', 'movement: Dip'],
  ['before any entry', '# nothing<|>\nsession 2026-11-03', undefined],
  ['on an empty line', session('<|>'), undefined],
  ['past the last line', 'session 2026-11-03\n\n\n<|>', undefined],
])('%s', (_name, text, expected) => {
  expect(locateCursor(text)).toBe(expected);
});

test('says which block, line and cell', () => {
  const text = 'session 2026-11-03 Ann Vell | Bev Stromm\n  A straight\n    Dip: 5 | 6 @ bw\n';
  const found = locate(readWhole(text).model, 2, 13);
  expect(found).toMatchObject({
    kind: 'amount',
    cell: 1,
    line: { name: { text: 'Dip' } },
    block: { letter: 'A' },
  });
});
