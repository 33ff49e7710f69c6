import { printProblems } from '../support/print-problems.ts';
import { readText } from '../support/read-text.ts';

const HEADERS: Readonly<Record<string, string>> = {
  session: 'session 2026-11-17 Ivo Brundt',
  plan: 'plan Wicker Base',
  exercise: 'exercise Goblet Squat',
  place: 'place Herne Loft',
  athlete: 'athlete Ivo Brundt',
};

/** `session: Row: 5` → the lines below it in a table: what is said of the line in a session. */
export function printRow(input: string): string[] {
  const [, kind, text] = /^(\w+): (.*)$/.exec(input)!;
  const written = text!.split(' / ');
  const header = HEADERS[kind!];
  const lines = header === undefined ? written : [header, ...written.map((line) => `  ${line}`)];
  return printProblems(lines, readText(...lines)).flatMap((row) => {
    const [message, ...fixes] = row.split(' → ');
    return [`    ${message}`, ...fixes.map((fix) => `      → ${fix}`)];
  });
}
