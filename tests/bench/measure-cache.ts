import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { compare, type Findings, megabytes, type Plan, type Row } from './bench.ts';
import { preparePractice } from './generate-practice.ts';
import { bareNode, checkCommand } from './measure-check.ts';
import { benchFolder, commandLine } from './paths.ts';
import { timeProcess } from './processes.ts';
import { findMedian } from './statistics.ts';

/** The option that names a folder for the cache. */
const OPTION = '--cache';

/** The command line with what an earlier run left, against one with nothing left, both less a bare Node. */
export async function measureCache({ usual, runs }: Plan): Promise<Findings> {
  const row: Row = {
    what: `check, warm cache, ${megabytes(usual)}, less a bare Node`,
    samples: [],
    unit: 'ms',
    target: 0.4,
    stretch: 0.2,
  };
  const help = spawnSync(process.execPath, [commandLine, 'check', '--help'], { encoding: 'utf8' }).stdout;
  if (!help.includes(OPTION)) return { rows: [{ ...row, note: 'not there yet' }], growth: [] };
  const { folder } = preparePractice(usual);
  const [cold, warm, bare]: number[][] = [[], [], []];
  for (let run = 0; run < runs; run++) {
    const cache = mkdtempSync(join(benchFolder, 'cache-'));
    const command = checkCommand(folder, OPTION, cache);
    cold!.push((await timeProcess(command)).wall);
    warm!.push((await timeProcess(command)).wall);
    bare!.push((await timeProcess(bareNode)).wall);
    rmSync(cache, { recursive: true, force: true });
  }
  const less = findMedian(bare!);
  const judged = compare(findMedian(warm!) - less, findMedian(cold!) - less, 'cold');
  return { rows: [{ ...row, samples: warm!.map((time) => time - less), judged }], growth: [] };
}
