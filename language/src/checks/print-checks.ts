/** The users' reference of all checks, made from the table of checks. */
import { escapeSigns } from '../measures/print-methods.ts';
import { CHECKS, type CheckCode, findCheck } from './catalogue.ts';

/** Headings in the table's order, each with the first check that stands under it. */
const GROUPS: readonly (readonly [heading: string, first: CheckCode])[] = [
  ['Reading a line', 'syntax'],
  ['Blocks', 'round-count'],
  ['Names across files', 'unknown-movement'],
  ['Loads', 'no-load'],
  ['Plans', 'plan-day'],
  ['Cautions', 'caution-youth'],
];

const INTRODUCTION = `# Checks

Everything that Plimsoll tells about a log or a plan, by its code. This page is made from \`src/checks/catalogue.ts\` by
\`npm run generate\`; change it there.

An **error** cannot be meant, and what it is about is left out of the numbers. A **warning** is probably a slip. An **info** or
a **hint** is worth knowing. Whatever it is, it informs and never blocks. [How to set another severity, or to silence a
check on one line](README.md#checks), stands with the notation. A file that
could not be read, or not wholly, is told as \`unreadable-file\` on its first line, and nothing silences that.

"Common practice" is a custom of the trade without a source, "from memory" a source that was not at hand, "our choice" a
number that nobody else answers for. The cautions are for planning by a qualified coach, are no medical advice, and defer
to licensed practitioners.
`;

/** The whole page as Markdown. */
export function printChecks(): string {
  const sections = groupChecks().map(({ heading, codes }) =>
    [`## ${heading}\n`, ...codes.map(printCheck)].join('\n'),
  );
  return [INTRODUCTION, ...sections].join('\n');
}

/** Every check under the last heading that begins at it or before it. */
export function groupChecks(): readonly { readonly heading: string; readonly codes: readonly CheckCode[] }[] {
  const codes = Object.keys(CHECKS) as CheckCode[];
  const starts = GROUPS.map(([, first]) => codes.indexOf(first));
  return GROUPS.map(([heading], index) => ({
    heading,
    codes: codes.slice(starts[index], starts[index + 1]),
  }));
}

function printCheck(code: CheckCode): string {
  const { severity, says, fix, why, from, history, source } = findCheck(code);
  const facts = [
    ['Severity', severity],
    ['Says, for example', says],
    ['A fix', fix],
    ['Why', why],
    ['From', from && fillIn(code, from)],
    ['After', history && fillIn(code, history)],
    ['Source', source],
  ] as const;
  const lines = facts.flatMap(([name, text]) => (text ? `- ${name}: ${escapeSigns(text)}` : []));
  return `### \`${code}\`\n\n${lines.join('\n')}\n`;
}

/** `more than {percent} %` with the numbers of the check in it. */
function fillIn(code: CheckCode, text: string): string {
  const { numbers = {} } = findCheck(code);
  return text.replace(/\{(\w+)\}/g, (_all, name: string) => String(numbers[name]));
}
