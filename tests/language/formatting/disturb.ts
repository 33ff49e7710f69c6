import fc, { type Arbitrary } from 'fast-check';

/** How a hand or another program writes the same line: other space, dashes, crosses and capitals, no indentation. */
const HABITS: readonly ((line: string) => string)[] = [
  (line) => line.replace(/ (?=\S)/g, '  '),
  (line) => line.replace(/ /g, '\u00a0'),
  (line) => line.replace(/(?<=\S) /g, '\t'),
  (line) => line.replace(/(?<=\d) (?=kg|lb|s\b|m\b|min|cal)/g, ''),
  (line) => line.replace(/(?<=\d)x(?=\d)/g, ' × '),
  (line) => line.replace(/(?<=\d)x(?=\d)/g, 'X'),
  (line) => line.replace(/(?<=\d)-(?=\d)/g, '–'),
  (line) => line.replace(/, /g, ','),
  (line) => line.replace(/, /g, ' , '),
  (line) => line.replace(/ @ /g, '@'),
  (line) => line.replace(/: /g, ':'),
  (line) => line.replace(/ \| /g, '|'),
  (line) => line.replace(/^( *)([a-z]+)(?= )/, (_all, space, word) => `${space}${word.toUpperCase()}`),
  (line) =>
    line.replace(
      /^( *(?:effort|lasted|time|rest|cue|needs|muscles|pattern|bars|born|day|weeks))(?= )/,
      '$1:',
    ),
  (line) =>
    line.replace(/\b(?:rpe|rir|rest|tempo|side|left|right|of|drop|bw|kg|lb)\b/g, (word) =>
      word.toUpperCase(),
    ),
  (line) => `${line} \t`,
  (line) => (/^\s/.test(line) ? line.trimStart() : line),
  (line) => (/^\s/.test(line) ? `\t${line}` : line),
  (line) => `${line}\n`,
  (line) => `\n\n${line}`,
  (line) => (/^\s/.test(line) ? `    # said aside\n${line}` : `# said before\n${line}`),
  (line) => (/[:>]|^\s*(?:cue|setup|caution)\b/.test(line) ? line : `${line} # aside`),
];

const habit = fc.constantFrom<(line: string) => string>((line) => line, ...HABITS);

/** A text in which some lines are written by other habits, and maybe other line ends. */
export function disturb(text: string): Arbitrary<string> {
  const lines = text.split('\n');
  return fc
    .tuple(
      fc.array(fc.tuple(habit, habit), { minLength: lines.length, maxLength: lines.length }),
      fc.constantFrom('\n', '\n', '\r\n', '\r'),
      fc.constantFrom('', '\n', '\n\n\n'),
    )
    .map(([habits, lineEnd, end]) =>
      (
        lines
          .map((line, index) => habits[index]!.reduce((written, change) => change(written), line))
          .join('\n') + end
      )
        .split('\n')
        .join(lineEnd),
    );
}
