import type { ItemSlip } from '@plimsoll/language/reading/item-slip';
import { ITEM_SLIPS, writeSlip } from '@plimsoll/language/reading/item-slips';
import { expect, test } from 'vitest';
import { printRow } from './print-row.ts';

/** What a hurried hand writes behind `Row: `, what is said of it, and what each fix makes of the line. */
export type ItemRow = readonly [written: string, said: string, ...fixed: string[]];

/** Tests the rows of a table: what is said, that each slip has a row, and that what a fix writes is read. */
export function testItemRows(
  slips: readonly ItemSlip[],
  { session, plan }: { readonly session: readonly ItemRow[]; readonly plan: readonly ItemRow[] },
): void {
  const rows = [
    ...session.map((row) => ['session', ...row] as const),
    ...plan.map((row) => ['plan', ...row] as const),
  ];

  test.each(rows)('in a %s: %s', (kind, written, said, ...fixed) => {
    const [message, ...fixes] = printRow(`${kind}: Row: ${written}`);
    expect(message).toMatch(/^ {4}2:\d+ /);
    expect(message!.replace(/^ {4}2:\d+ /, '')).toBe(said);
    expect(fixes.map((fix) => fix.replace(/^.*?: Row: /, ''))).toEqual(fixed);
  });

  test('every slip of the table has a row', () => {
    const first = (kind: string, item: string): ItemSlip | undefined =>
      ITEM_SLIPS.find(
        (slip) =>
          (slip.within === undefined || (slip.within === 'plan') === (kind === 'plan')) &&
          writeSlip(slip, item) !== undefined,
      );
    const seen = new Set(
      rows.flatMap(([kind, written]) => [written, ...written.split(/,\s*/)].map((item) => first(kind, item))),
    );
    expect(slips.filter((slip) => !seen.has(slip)).map(({ pattern }) => pattern.source)).toEqual([]);
  });

  test('what a fix writes is read, up to a unit that only the coach knows, or what is for plans', () => {
    const readable = rows
      .flatMap(([, , , ...fixed]) =>
        fixed.flatMap((line) => printRow(`plan: Row: ${line.replace(' ⏎     ', ' / ')}`)),
      )
      .filter((row) => /^ {4}[23]:/.test(row));
    expect(readable.filter((row) => !/\[(?:missing-unit|for-plans)\]$/.test(row))).toEqual([]);
  });
}
