// `npm run bench [-- NAME…] [--smoke] [--large] [--runs N] [--write]`: see README.md beside this file.
import { existsSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { Findings, Plan } from './bench.ts';
import { measureCache } from './measure-cache.ts';
import { measureCheck } from './measure-check.ts';
import { measureLargeFile } from './measure-large-file.ts';
import { measureServer } from './measure-server.ts';
import { commandLine, serverBundle } from './paths.ts';
import { saveTable, writeTable } from './write-table.ts';

const MEASUREMENTS: Readonly<Record<string, (plan: Plan) => Promise<Findings>>> = {
  check: measureCheck,
  cache: measureCache,
  server: measureServer,
  'large-file': measureLargeFile,
};

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    smoke: { type: 'boolean' },
    large: { type: 'boolean' },
    runs: { type: 'string', default: '5' },
    write: { type: 'boolean' },
  },
});

const plan: Plan = values.smoke
  ? { smoke: true, sizes: [100_000], usual: 100_000, largeFile: 100_000, runs: 1, keystrokes: 4 }
  : {
      smoke: false,
      sizes: [1_000_000, 10_000_000, ...(values.large ? [100_000_000] : [])],
      usual: 10_000_000,
      largeFile: 1_000_000,
      runs: Number(values.runs),
      keystrokes: 100,
    };

const unknown = positionals.filter((name) => !Object.hasOwn(MEASUREMENTS, name));
if (unknown.length > 0) {
  throw new Error(`There is no ${unknown.join(', ')}: it is ${Object.keys(MEASUREMENTS).join(', ')}`);
}
for (const bundle of [commandLine, serverBundle]) {
  if (!existsSync(bundle)) throw new Error(`${bundle} is missing: npm run build makes it`);
}

const findings: Findings[] = [];
for (const [name, measure] of Object.entries(MEASUREMENTS)) {
  if (positionals.length > 0 && !positionals.includes(name)) continue;
  const start = performance.now();
  findings.push(await measure(plan));
  console.log(`${name}: measured in ${((performance.now() - start) / 1000).toFixed(1)} s`);
}
const table = writeTable({
  rows: findings.flatMap(({ rows }) => rows),
  growth: findings.flatMap(({ growth }) => growth),
});
// Tiny practices say nothing about speed; that everything ran is what a smoke run is for.
if (!plan.smoke) console.log(`\n${table}`);
if (values.write && !plan.smoke) saveTable(table);
