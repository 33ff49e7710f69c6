import { formatText } from '@plimsoll/language/formatting/format-text';
import { makeCircuit, makeStraight } from '@plimsoll/language/rewrites/make-circuit';
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { DEFINITIONS, sessionText } from '../measures/session-texts.ts';
import { applyRewrite, listErrors, rewriteLog, sumSessions } from '../support/apply-rewrite.ts';
import { PATIENCE, RUNS } from '../support/generators/runs.ts';

vi.setConfig({ testTimeout: PATIENCE });

const HEAD = 'session 2026-11-17\n';

describe('straight sets', () => {
  test('of a whole block keep its header', () => {
    const text = `${HEAD}  A straight, rest 2:00\n<|>    Dip: 3x5\n    > slow\n    Row: 8, 8, 7 @ 40 kg\n<|>  effort 7\n`;
    expect(applyRewrite(makeCircuit, text)).toEqual({
      title: 'Make a circuit of 3 rounds of these lines',
      kind: 'refactor.rewrite',
      files: {
        'log.plim': `${HEAD}  A circuit, 3 rounds, rest 2:00\n    Dip: 3x5\n    > slow\n    Row: 8, 8, 7 @ 40 kg\n  effort 7\n`,
      },
    });
  });

  test('without a header get one', () => {
    expect(
      rewriteLog(makeCircuit, `${HEAD}  <|>Dip: 2x5\n  # then\n  Row: 2x8<|>\n  > slow\n  effort 7\n`),
    ).toBe(`${HEAD}  circuit, 2 rounds\n    Dip: 2x5\n    # then\n    Row: 2x8\n    > slow\n  effort 7\n`);
  });

  test('before and behind the selection stay straight', () => {
    const text = `${HEAD}  A straight, rest 1:30\n    Dip: 3\n<|>    Dip: 2x5\n    Row: 2x8\n<|>    Plank: 30 s\n`;
    expect(rewriteLog(makeCircuit, text)).toBe(
      `${HEAD}  A straight, rest 1:30\n    Dip: 3\n  circuit, 2 rounds\n    Dip: 2x5\n    Row: 2x8\n  straight, rest 1:30\n    Plank: 30 s\n`,
    );
    expect(rewriteLog(makeCircuit, text.replace('    Dip: 3\n', ''))).toBe(
      `${HEAD}  A circuit, 2 rounds, rest 1:30\n    Dip: 2x5\n    Row: 2x8\n  straight, rest 1:30\n    Plank: 30 s\n`,
    );
  });

  test.each([
    ['one line', '  <|>Dip: 2x5\n'],
    ['another number of sets', '  <|>Dip: 2x5\n  Row: 3x8<|>\n'],
    ['one set', '  <|>Dip: 5\n  Row: 8<|>\n'],
    ['a warm-up', '  <|>warmup Dip: 2x5\n  Row: 2x8<|>\n'],
    ['two blocks', '  <|>Dip: 2x5\n  A straight\n    Row: 2x8<|>\n'],
    ['times', '  <|>Dip: 2x5\n  Row: 2x8<|>\n  time 1:00, 2:00\n'],
    ['a broken line between', '  <|>Dip: 2x5\n  Row: 5 5\n  Row: 2x8<|>\n'],
  ])('not offered for %s', (_name, lines) => expect(rewriteLog(makeCircuit, HEAD + lines)).toBeUndefined());
});

describe('a circuit', () => {
  test('becomes straight sets', () => {
    const text = `${HEAD}  B circuit, 3 rounds, rest 1:15\n    Di<|>p: 5 rpe 8\n    Row: 8, 8, 7 @ 40 kg\n    Box Squat: 1x5 @ 60 kg\n`;
    expect(rewriteLog(makeStraight, text)).toBe(
      `${HEAD}  B straight, rest 1:15\n    Dip: 3x5 rpe 8\n    Row: 8, 8, 7 @ 40 kg\n    Box Squat: 3x5 @ 60 kg\n`,
    );
  });

  test.each([
    ['times', '  cir<|>cuit, 3 rounds\n    Dip: 5\n    time 1:00, ?, ?\n'],
    ['passes', '  cir<|>cuit, 3 rounds x 2 passes\n    Dip: 5\n'],
    ['an odd number of sets', '  cir<|>cuit, 3 rounds\n    Dip: 5, 4\n'],
    ['a straight block', '  stra<|>ight\n    Dip: 5, 4\n'],
  ])('not offered for %s', (_name, lines) => expect(rewriteLog(makeStraight, HEAD + lines)).toBeUndefined());
});

test('no total changes either way, and the result is canonical', () => {
  fc.assert(
    fc.property(sessionText, fc.nat(10), fc.nat(3), (log, from, more) => {
      const lines = log.split('\n');
      const at = 1 + (from % (lines.length - 2));
      const marked = lines.with(at, `<|>${lines[at]}`);
      const end = Math.min(lines.length - 2, at + more);
      const selected = marked.with(end, `${marked[end]}<|>`).join('\n');
      for (const rewriter of [makeCircuit, makeStraight]) {
        const after = rewriteLog(rewriter, selected);
        if (after === undefined) continue;
        const [then, now] = [log, after].map((text) =>
          sumSessions({ 'definitions.plim': DEFINITIONS, 'log.plim': text }),
        );
        expect(now, after).toEqual(then);
        expect(listErrors(after)).toEqual([]);
        expect(formatText(after), after).toEqual([]);
      }
    }),
    { ...RUNS, numRuns: 3 * RUNS.numRuns },
  );
});
