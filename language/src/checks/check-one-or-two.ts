import type { MovementLine } from '../model/entry.ts';
import type { Load } from '../model/quantity.ts';
import type { Edit, Fix, Span } from '../model/source.ts';
import { implementOf } from '../practice/movement.ts';
import { printMass } from '../units/mass.ts';
import { type CheckContext, NO_PROBLEMS, problem, textAt } from './check-context.ts';
import type { LineCheck } from './line-checks.ts';
import { printPlain } from './written-masses.ts';

/** One load where a rep moves two dumbbells or kettlebells. `1x14 kg` says that only one is held. */
export const checkOneOrTwo: LineCheck =
  (_entry, context) =>
  ({ line }) => {
    const movement = context.practice.findMovement(line.name.text);
    if (movement?.entry.repMoves !== 'both' || isUnclear(line)) return NO_PROBLEMS;
    const implement = implementOf(movement);
    if (implement !== 'dumbbell' && implement !== 'kettlebell') return NO_PROBLEMS;
    const single = listSingleMasses(line, context);
    const [first] = single;
    if (!first) return NO_PROBLEMS;
    const found = problem(
      'one-or-two',
      first.span,
      `${first.example} each, or both together? ${movement.name} takes two: write 2x${first.example} if each is that heavy`,
      [
        rewrite(single, 'Each', '2x', 1),
        // Half of a range or of a load with chains is not for us to say.
        single.every(({ isPlain }) => isPlain) ? rewrite(single, 'Both together', '2x', 2) : undefined,
        rewrite(single, 'Only one is held', '1x', 1),
      ],
    );
    return [found];
  };

/** Where a slip stands among the sets, a fix of the loads would leave it there. */
function isUnclear({ broken, cells }: MovementLine): boolean {
  return broken || cells.some(({ sets }) => sets.some(({ amount }) => amount === undefined));
}

interface SingleMass {
  /** Where the load stands as written, `14 kg`. */
  readonly span: Span;
  readonly text: string;
  readonly written: number;
  readonly example: string;
  readonly isPlain: boolean;
}

/** The loads on a line that are one mass, drops included. */
function listSingleMasses({ cells }: MovementLine, context: CheckContext): SingleMass[] {
  return cells
    .flatMap(({ sets }) => sets)
    .flatMap((set) => {
      const own = set.ownLoad && set.loadSpan ? readSingle(set.load, set.loadSpan, context) : [];
      const drops = set.drops.flatMap((drop) => readSingle(drop.load, drop.span, context));
      return [...own, ...drops];
    });
}

/** `span` is the load's, or that of a drop that ends with it. */
function readSingle(load: Load | undefined, span: Span, context: CheckContext): SingleMass[] {
  if (load?.kind !== 'mass' || load.implements !== 1 || load.mass.grams === 0) return [];
  const text = /[^@]*$/.exec(textAt(context, span))![0].trim();
  if (/^1\s*[x×]/i.test(text)) return [];
  const { mass } = load;
  return [
    {
      span: { ...span, start: span.end - text.length },
      text,
      written: mass.written,
      example: printMass(mass.grams, mass.unit),
      isPlain: !load.high && !load.chain && !load.band,
    },
  ];
}

/** One fix for all loads of a line: `Each: 2x14 kg`. */
function rewrite(masses: readonly SingleMass[], title: string, times: string, share: number): Fix {
  const edits = masses.map(
    ({ span, text, written }): Edit => ({
      span,
      newText: text.replace(/\d+(?:\.\d+)?/, `${times}${printPlain(written / share)}`),
    }),
  );
  return { title: `${title}: ${edits[0]!.newText}`, edits };
}
