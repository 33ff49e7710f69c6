import { spawn, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

export interface Command {
  readonly program: string;
  readonly args: readonly string[];
}

/** Milliseconds from starting a program to its end, and those that it computed; the latter where there is /proc. */
export interface ProcessTime {
  readonly wall: number;
  readonly cpu: number | undefined;
}

/** Runs a program to its end; throws if it fails. What it prints is dropped. */
export async function timeProcess({ program, args }: Command): Promise<ProcessTime> {
  const before = readCpuTicksOfEnded();
  const start = performance.now();
  const child = spawn(program, args, {
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let complaint = '';
  child.stderr.on('data', (chunk) => {
    complaint += chunk;
  });
  const code = await new Promise<number | null>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', resolve);
  });
  const wall = performance.now() - start;
  const after = readCpuTicksOfEnded();
  if (code !== 0)
    throw new Error(`${program} ${args.join(' ')} ended with ${code}: ${complaint.slice(0, 500)}`);
  return { wall, cpu: before === undefined || after === undefined ? undefined : (after - before) * 10 };
}

/** Times each command that many times, in turns, so that all meet the same noise. */
export async function timeInTurns(commands: readonly Command[], runs: number): Promise<ProcessTime[][]> {
  const times: ProcessTime[][] = commands.map(() => []);
  for (let run = 0; run < runs; run++) {
    for (const [index, command] of commands.entries()) times[index]!.push(await timeProcess(command));
  }
  return times;
}

export function isInstalled(program: string): boolean {
  return spawnSync(program, ['--version'], { stdio: 'ignore' }).error === undefined;
}

/** Resident memory of a process in bytes; undefined where there is no /proc. */
export function readResidentBytes(pid: number): number | undefined {
  const kilobytes = /^VmRSS:\s+(\d+) kB/m.exec(readProc(pid, 'status') ?? '')?.[1];
  return kilobytes === undefined ? undefined : Number(kilobytes) * 1024;
}

/** Waits until a process has computed next to nothing for a second; only waits a while where there is no /proc. */
export async function waitUntilIdle(pid: number): Promise<void> {
  if (readCpuTicks(pid) === undefined) return wait(10_000);
  let quiet = 0;
  let before = readCpuTicks(pid)!;
  while (quiet < 4) {
    await wait(250);
    const now = readCpuTicks(pid);
    if (now === undefined) return;
    quiet = now - before <= 1 ? quiet + 1 : 0;
    before = now;
  }
}

export const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Time in user and system mode, in hundredths of a second: fields 14 and 15 of proc(5) stat. */
function readCpuTicks(pid: number): number | undefined {
  const fields = readStat(pid);
  return fields && Number(fields[11]) + Number(fields[12]);
}

/** The same of all processes that this one started and that have ended: fields 16 and 17. */
function readCpuTicksOfEnded(): number | undefined {
  const fields = readStat(process.pid);
  return fields && Number(fields[13]) + Number(fields[14]);
}

/** The fields behind the name, the third being the first. */
function readStat(pid: number): string[] | undefined {
  return readProc(pid, 'stat')?.split(') ').at(-1)?.split(' ');
}

function readProc(pid: number, name: string): string | undefined {
  try {
    return readFileSync(`/proc/${pid}/${name}`, 'utf8');
  } catch {
    return undefined;
  }
}
