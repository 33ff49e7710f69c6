import fc from 'fast-check';
import type { CompositeCstNode } from 'langium';
import { expect, test, vi } from 'vitest';
import { printEntry } from '../../../language/src/printing/print-entry.ts';
import { createSyntaxServices } from '../../../language/src/syntax/syntax-services.ts';
import { entry } from '../support/generators/entries.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';
import { slip } from '../support/generators/slips.ts';
import { GrammarCoverage } from './grammar-coverage.ts';

vi.setConfig({ testTimeout: PATIENCE });

const services = createSyntaxServices();

test('the generators reach every alternative of the grammar', () => {
  const coverage = new GrammarCoverage(services.Grammar);
  const printed = fc.array(entry, { maxLength: 3 }).map((entries) => entries.map(printEntry).join('\n'));
  const numRuns = Math.max(RUNS.numRuns, 400);
  const texts = [
    ...fc.sample(printed, { ...RUNS, numRuns }),
    ...fc.sample(slip, { ...RUNS, numRuns: 5 * numRuns }),
  ];
  let parsed = 0;
  for (const text of texts) {
    const { value, parserErrors } = services.parser.LangiumParser.parse(text);
    if (parserErrors.length > 0) continue;
    coverage.add(value.$cstNode as CompositeCstNode);
    parsed++;
  }
  const { reached, all } = coverage.count();
  console.log(
    `grammar coverage: ${reached} of ${all} alternatives (${parsed} of ${texts.length} texts without syntax error)`,
  );
  expect(coverage.listUnreached()).toEqual([]);
});
