import type { MassRange } from '@plimsoll/language/model/entry';
import type { Mass } from '@plimsoll/language/model/quantity';
import { printMass } from '@plimsoll/language/units/mass';
import { printNumber } from '@plimsoll/language/units/number';
import { escapeMarkdown, joinLines, joinParagraphs } from '../../markdown.ts';
import type { FeatureContext } from '../context.ts';
import type { LocatedAs } from '../hover.ts';

/** What a place has. */
export function hoverPlace({ practice }: FeatureContext, _uri: string, { name }: LocatedAs<'place'>): string {
  const place = practice.findPlace(name);
  const title = `**${escapeMarkdown(place?.name ?? name)}**`;
  if (!place) return `${title} · no entry of its own, so nothing is checked against its inventory`;
  const { bars, plates, collars, dumbbells, kettlebells, stacks, has } = place.entry;
  const fact = (word: string, parts: readonly string[]) =>
    parts.length > 0 ? `${word}: ${parts.join(', ')}` : undefined;
  return joinParagraphs([
    title,
    joinLines([
      fact('Bars', bars.map(print)),
      fact(
        'Plates',
        plates.map(({ count, mass }) => `${count}x${print(mass)}`),
      ),
      fact('Collars', collars ? [print(collars)] : []),
      fact('Dumbbells', dumbbells.map(printRange)),
      fact('Kettlebells', kettlebells.map(print)),
      ...stacks.map((stack) => fact(escapeMarkdown(stack.name.text), [printRange(stack)])),
      fact(
        'Has',
        has.map(({ text }) => escapeMarkdown(text)),
      ),
    ]),
  ]);
}

function print({ grams, unit }: Mass): string {
  return printMass(grams, unit);
}

function printRange({ low, high, step, sold }: MassRange): string {
  return `${printNumber(low.written, 2)} to ${print(high)} by ${print(step)}${sold ? `, ${sold}` : ''}`;
}
