import { compare, type Findings, megabytes, type Plan, type Row } from './bench.ts';
import { preparePractice } from './generate-practice.ts';
import { measureIncrementalParser } from './incremental-parser.ts';
import { measureCompletions, measureKeystrokes, milliseconds } from './measure-server.ts';
import { measurePlainLangium } from './plain-langium.ts';
import { ServerClient } from './server-client.ts';
import { findQuantile } from './statistics.ts';

const P95 = 0.95;

/** Everything in one file: typing, completing, beside plain Langium and an incremental parser of JSON. */
export async function measureLargeFile({ largeFile, keystrokes }: Plan): Promise<Findings> {
  const practice = preparePractice(largeFile, 'one');
  const path = practice.logs[0]!;
  const client = await ServerClient.start(practice.folder);
  await client.settle();
  await client.open(path);
  const own = await measureKeystrokes(client, path, keystrokes);
  const completions = client.capabilities.completionProvider
    ? await measureCompletions(client, path, keystrokes)
    : [];
  await client.stop();
  const plain = await measurePlainLangium({ practice, path, keystrokes: Math.min(10, keystrokes) });
  const lezer = measureIncrementalParser(largeFile, keystrokes);
  const p95 = findQuantile(own, P95);
  const size = megabytes(practice.bytes);
  const completion: Row = {
    what: `completion at any place of a file of ${size}`,
    samples: completions,
    unit: 'ms',
    target: 10,
  };
  return {
    rows: [
      {
        what: `keystroke to fresh lenses, one file of ${size}`,
        samples: own,
        unit: 'ms',
        judged: milliseconds(p95),
        target: 10,
      },
      {
        what: 'the same against plain Langium in the same file (its update alone)',
        samples: plain.keystrokes,
        unit: 'ms',
        judged: compare(p95, findQuantile(plain.keystrokes, P95), 'plain Langium'),
      },
      {
        what: 'the same against an incremental parser (Lezer on JSON of that size: its tree alone)',
        samples: lezer,
        unit: 'ms',
        judged: compare(p95, findQuantile(lezer, P95), 'Lezer'),
      },
      completions.length > 0
        ? { ...completion, judged: milliseconds(findQuantile(completions, P95)) }
        : { ...completion, note: 'not there yet' },
    ],
    growth: [],
  };
}
