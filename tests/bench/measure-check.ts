import { spawnSync } from 'node:child_process';
import { compare, type Findings, type Growth, megabytes, type Plan, type Row } from './bench.ts';
import { prepareJournal } from './generate-journal.ts';
import { preparePractice, TODAY } from './generate-practice.ts';
import { commandLine } from './paths.ts';
import { type Command, isInstalled, type ProcessTime, timeInTurns } from './processes.ts';
import { findMedian } from './statistics.ts';

interface Peer {
  readonly name: string;
  readonly program: string;
  readonly syntax: 'ledger' | 'beancount';
  readonly args: (journal: string) => string[];
  readonly target: number;
  readonly stretch: number;
}

/** Programs that read plain-text records too, each doing about what `check` does. */
const PEERS: readonly Peer[] = [
  {
    name: 'ledger stats',
    program: 'ledger',
    syntax: 'ledger',
    args: (journal) => ['--args-only', '-f', journal, 'stats'],
    target: 1,
    stretch: 0.6,
  },
  {
    name: 'hledger check',
    program: 'hledger',
    syntax: 'ledger',
    args: (journal) => ['-f', journal, 'check'],
    target: 0.25,
    stretch: 0.15,
  },
  {
    name: 'bean-check',
    program: 'bean-check',
    syntax: 'beancount',
    args: (journal) => ['--no-cache', journal],
    target: 0.25,
    stretch: 0.15,
  },
];

/** A node process that does nothing: what no script can be faster than. */
export const bareNode: Command = { program: process.execPath, args: ['-e', '0'] };

export function checkCommand(folder: string, ...more: string[]): Command {
  return { program: process.execPath, args: [commandLine, 'check', folder, '--today', TODAY, ...more] };
}

/** The command line on a practice that it has never seen, whole process, against its peers in turns. */
export async function measureCheck({ sizes, usual, runs }: Plan): Promise<Findings> {
  const practice = preparePractice(usual);
  requireValid(practice.folder);
  const present = PEERS.filter(({ program }) => isInstalled(program));
  const commands = present.map(({ program, args, syntax }) => ({
    program,
    args: args(prepareJournal(practice.lines, syntax)),
  }));
  const [own, bare, ...others] = await timeInTurns(
    [checkCommand(practice.folder), bareNode, ...commands],
    runs,
  );
  const rows: Row[] = [
    {
      what: `check, cold, ${megabytes(usual)} (${practice.lines} lines), whole process`,
      samples: listWalls(own!),
      unit: 'ms',
    },
    { what: 'a Node process that does nothing', samples: listWalls(bare!), unit: 'ms' },
  ];
  for (const { name, target, stretch } of PEERS) {
    const samples = others[present.findIndex((peer) => peer.name === name)];
    rows.push({
      what: `the same against \`${name}\`, a journal of as many lines`,
      samples: listWalls(samples ?? []),
      unit: 'ms',
      ...(samples ? { judged: compareProcesses(own!, samples, name) } : { note: 'not installed: skipped' }),
      target,
      stretch,
    });
  }
  return { rows, growth: [await measureGrowth(sizes, usual, own!, findMedian(listWalls(bare!)))] };
}

const listWalls = (times: readonly ProcessTime[]): number[] => times.map(({ wall }) => wall);

/** By wall time; the ratio of what they computed stands beside it, since a busy machine disturbs it less. */
function compareProcesses(
  own: readonly ProcessTime[],
  other: readonly ProcessTime[],
  whose: string,
): Row['judged'] {
  const judged = compare(findMedian(listWalls(own)), findMedian(listWalls(other)), whose)!;
  const [computed, others] = [own, other].map((times) => times.flatMap(({ cpu }) => cpu ?? []));
  if (computed!.length === 0 || others!.length === 0 || findMedian(others!) === 0) return judged;
  const ratio = findMedian(computed!) / findMedian(others!);
  return { ...judged, words: `${judged.words} (${ratio.toFixed(2)} of its processor time)` };
}

/** What is measured must be the reading of a good practice, not the printing of what is wrong in it. */
function requireValid(folder: string): void {
  const { program, args } = checkCommand(folder, '--fail-on', 'warning');
  const { status, stdout, stderr } = spawnSync(program, args, { encoding: 'utf8', maxBuffer: 1e9 });
  if (status !== 0)
    throw new Error(`The generated practice is not clean:\n${stdout.slice(0, 2000)}${stderr}`);
}

async function measureGrowth(
  sizes: readonly number[],
  usual: number,
  times: readonly ProcessTime[],
  bare: number,
): Promise<Growth> {
  const points: [number, number][] = [];
  for (const bytes of sizes) {
    const [own] =
      bytes === usual ? [times] : await timeInTurns([checkCommand(preparePractice(bytes).folder)], 1);
    points.push([bytes, findMedian(listWalls(own!)) - bare]);
  }
  return { what: 'check, cold, less a Node process that does nothing', points };
}
