import type { Block, MovementLine } from '../model/entry.ts';
import { listModifiers } from '../plans/line-steps.ts';
import { checkLineForPlans } from './check-for-plans.ts';
import { checkUnevenLoads } from './check-uneven-loads.ts';

/** What a line may have that a check looks for. Most lines have none of it. */
const HAS = {
  pain: (line: MovementLine) => listModifiers(line).some(({ kind }) => kind === 'pain'),
  maxTest: ({ purpose, cells }: MovementLine) =>
    purpose === 'test' && cells.some(({ sets }) => sets.some(({ load }) => load?.kind === 'mass')),
  manyCells: ({ cells }: MovementLine) => cells.length > 1,
  unevenLoads: (line: MovementLine) => checkUnevenLoads(line).length > 0,
  forPlans: (line: MovementLine) => checkLineForPlans(line).length > 0,
} satisfies Record<string, (line: MovementLine) => boolean>;

export type Trait = keyof typeof HAS;

const TRAITS = Object.keys(HAS) as readonly Trait[];
/** Each trait is a bit. */
const BITS = Object.fromEntries(TRAITS.map((trait, index) => [trait, 1 << index])) as Record<Trait, number>;

/** By line, for the same line comes again and again. */
const known = new WeakMap<MovementLine, number>();

function readTraits(line: MovementLine): number {
  let traits = 0;
  for (const trait of TRAITS) if (HAS[trait](line)) traits |= BITS[trait];
  known.set(line, traits);
  return traits;
}

/** Those of the blocks that were asked about last: the checks of an entry come one after another. */
let last: { readonly blocks: readonly Block[]; readonly traits: number } = { blocks: [], traits: 0 };

export function hasTrait(line: MovementLine, trait: Trait): boolean {
  return HAS[trait](line);
}

/** Whether any line of some blocks has a trait. */
export function haveTrait(blocks: readonly Block[], trait: Trait): boolean {
  if (last.blocks !== blocks) last = { blocks, traits: joinTraits(blocks) };
  return (last.traits & BITS[trait]) !== 0;
}

function joinTraits(blocks: readonly Block[]): number {
  let traits = 0;
  for (const { lines } of blocks) for (const line of lines) traits |= known.get(line) ?? readTraits(line);
  return traits;
}
