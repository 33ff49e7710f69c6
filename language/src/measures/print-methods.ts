/** The users' reference of all formulas and their sources, made from the table of methods. */
import { CONVENTIONS, findMethod, METHODS, type Method, type MethodId } from './methods.ts';

/** Headings in the table's order, each with the first method that stands under it. */
const GROUPS: readonly (readonly [heading: string, first: MethodId])[] = [
  ['Sums and rates', 'sets'],
  ['Maxes and records', 'stated-max'],
  ['Estimated one-repetition maximum', 'true-single'],
  ['Effort and load over time', 'reps-in-reserve'],
  ['Trends and changes', 'theil-sen'],
  ['Balance, adherence and plans', 'hard-sets'],
  ['Body mass, planned loads and the calendar', 'body-share'],
];

const INTRODUCTION = `# Measures

Every number that Plimsoll shows, with its formula and where the formula comes from. The same words stand in the hover over
the number. This page is made from \`src/measures/methods.ts\` by \`npm run generate\`; change it there.

"From memory" and "as quoted in later sources" mean that the publication was not at hand when the formula was entered.
"Common practice" is a custom of the trade without a source. Estimates are for planning by a qualified coach and are no
medical advice.
`;

/** The whole page as Markdown. */
export function printMethods(): string {
  const sections = groupMethods().map(({ heading, ids }) =>
    [`## ${heading}\n`, ...ids.map((id) => printMethod(findMethod(id)))].join('\n'),
  );
  const conventions = ['## What all of them rest on\n', ...CONVENTIONS.map(printMethod)].join('\n');
  return [INTRODUCTION, ...sections, conventions].join('\n');
}

/** Every method under the last heading that begins at it or before it. */
export function groupMethods(): readonly { readonly heading: string; readonly ids: readonly MethodId[] }[] {
  const ids = Object.keys(METHODS) as MethodId[];
  const starts = GROUPS.map(([, first]) => ids.indexOf(first));
  return GROUPS.map(([heading], index) => ({ heading, ids: ids.slice(starts[index], starts[index + 1]) }));
}

function printMethod({ title, formula, source, note }: Method): string {
  const lines = [
    `### ${escapeSigns(title)}\n`,
    `- Formula: ${escapeSigns(formula)}`,
    `- Source: ${escapeSigns(source)}`,
  ];
  return `${[...lines, ...(note ? [`- Note: ${escapeSigns(note)}`] : [])].join('\n')}\n`;
}

/** Formulas hold signs that Markdown would take for its own. */
export function escapeSigns(text: string): string {
  return text.replace(/[\\`*_[\]<>|~#]/g, '\\$&');
}
