import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg, platform, release, totalmem } from 'node:os';
import { join } from 'node:path';
import { type Findings, type Growth, megabytes, type Row } from './bench.ts';
import { findMedian, findQuantile, fitExponent } from './statistics.ts';

const README = join(import.meta.dirname, 'README.md');
const [BEGIN, END] = ['<!-- results -->', '<!-- end of results -->'];

/** The findings as Markdown: machine, comparisons, growth. */
export function writeTable({ rows, growth }: Findings): string {
  const head = ['what', 'median', 'p95', 'runs', 'lowest to highest', 'judged by', 'target (stretch)', 'met'];
  return [
    `${describeMachine()}\n`,
    ...writeRows(head, rows.map(writeRow)),
    '',
    'How it grows, b of y = a · x^b fitted by least squares (0: not at all, 1: in step):\n',
    ...writeRows(['what', 'at each size', 'b'], growth.map(writeGrowth)),
  ].join('\n');
}

/** Puts the table between the marks of the README beside this file. */
export function saveTable(table: string): void {
  const text = readFileSync(README, 'utf8');
  const [begin, end] = [text.indexOf(BEGIN), text.indexOf(END)];
  if (begin < 0 || end < begin) throw new Error(`${README} has no marks for the results`);
  writeFileSync(README, `${text.slice(0, begin + BEGIN.length)}\n\n${table}\n\n${text.slice(end)}`);
}

/** Whether the row meets its target, and more; undefined where nothing can be said. */
export function judge({ judged, target, stretch }: Row): 'yes' | 'no' | 'stretch' | undefined {
  if (!judged || target === undefined) return undefined;
  if (stretch !== undefined && judged.value <= stretch) return 'stretch';
  return judged.value <= target ? 'yes' : 'no';
}

function writeRow(row: Row): string[] {
  const { what, samples, judged, target, stretch, note } = row;
  const goal = target === undefined ? '' : `${target}${stretch === undefined ? '' : ` (${stretch})`}`;
  const verdict = judge(row) ?? '';
  const label = note ? `${what}: ${note}` : what;
  if (samples.length === 0) return [label, '–', '–', '0', '–', '', goal, verdict];
  const show = (value: number) => `${round(value)} ${row.unit === 'ms' ? 'ms' : row.unit}`;
  return [
    label,
    show(findMedian(samples)),
    // Of a few the highest says as much.
    samples.length < 20 ? '' : show(findQuantile(samples, 0.95)),
    String(samples.length),
    `${round(Math.min(...samples))} to ${round(Math.max(...samples))}`,
    judged?.words ?? '',
    goal,
    verdict,
  ];
}

function writeGrowth({ what, points }: Growth): string[] {
  const known = points.filter(([, value]) => value > 0);
  const isMemory = what.includes('memory');
  const show = (value: number) => (isMemory ? megabytes(value) : `${round(value)} ms`);
  const exponent = fitExponent(known);
  return [
    what,
    known.map(([bytes, value]) => `${megabytes(bytes)}: ${show(value)}`).join(', ') || 'not there yet',
    exponent === undefined ? '' : exponent.toFixed(2),
  ];
}

function writeRows(head: readonly string[], rows: readonly (readonly string[])[]): string[] {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(head), line(head.map(() => '---')), ...rows.map(line)];
}

const round = (value: number): string => (value < 10 ? value.toFixed(1) : String(Math.round(value)));

function describeMachine(): string {
  const [cpu] = cpus();
  const memory = `${Math.round(totalmem() / 1e9)} GB of memory`;
  const peers = ['ledger', 'hledger', 'bean-check'].flatMap(readVersion).join('; ');
  const load = loadavg()[0]!.toFixed(1);
  return [
    `${new Date().toISOString().slice(0, 10)}, ${cpus().length} cores of ${cpu?.model ?? 'unknown'}, ${memory}, ${platform()} ${release()}, Node ${process.version}.`,
    `Load average of the last minute at the end: ${load}.`,
    peers === '' ? 'No peer is installed.' : `Peers: ${peers}.`,
  ].join(' ');
}

function readVersion(program: string): string[] {
  try {
    return [execFileSync(program, ['--version'], { encoding: 'utf8', stdio: 'pipe' }).split('\n')[0]!.trim()];
  } catch {
    return [];
  }
}
