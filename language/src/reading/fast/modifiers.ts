import type { Modifier } from '../../model/quantity.ts';
import { toQuantity } from '../build-values.ts';
import { takeDuration, within } from './amounts.ts';
import { giveUp, type LineCursor } from './line-cursor.ts';

const TEMPO = /(?:\d{1,2}|X)(?:-(?:\d{1,2}|X)){2,3}(?=[ ,|]|$)/y;
/** Words alone: a number, a rating or a drop would end the name. */
const PLAIN_NAME = /^[A-Za-z][A-Za-z'-]*(?: [A-Za-z][A-Za-z'-]*)*$/;

type Reader = (cursor: LineCursor, start: number) => Modifier;

/** Items of a cell that are no set, by their first word. Steps and what else plans have are left to the parser. */
export const MODIFIERS: ReadonlyMap<string, Reader> = new Map<string, Reader>([
  [
    'tempo',
    (cursor, start) => {
      const phases = cursor
        .takeMatch(TEMPO)
        .split('-')
        .map((phase) => (phase === 'X' ? 'X' : Number(phase)));
      return { kind: 'tempo', phases, span: cursor.spanFrom(start) };
    },
  ],
  [
    'rest',
    (cursor, start) => {
      const low = toQuantity(takeDuration(cursor), 'clock');
      return { kind: 'rest', low, span: cursor.spanFrom(start) };
    },
  ],
  [
    'setting',
    (cursor, start) => {
      const text = takeFreeText(cursor);
      return text === '' ? giveUp() : { kind: 'setting', text, span: cursor.spanFrom(start) };
    },
  ],
  [
    'pain',
    (cursor, start) => {
      const score = within('pain', cursor.takeNumber());
      const where = takeFreeText(cursor);
      return { kind: 'pain', score, ...(where !== '' && { where }), span: cursor.spanFrom(start) };
    },
  ],
  [
    'instead',
    (cursor, start) => {
      if (!cursor.takesWord('of')) giveUp();
      const nameStart = cursor.at;
      const text = cursor.takeText();
      if (!PLAIN_NAME.test(text) || /\bdrop\b/i.test(text) || text.toLowerCase() === 'bw') giveUp();
      return {
        kind: 'instead',
        of: { text, span: cursor.spanFrom(nameStart) },
        span: cursor.spanFrom(start),
      };
    },
  ],
]);

/** Text that begins with a letter or a digit and is not taken for the body's weight. */
function takeFreeText(cursor: LineCursor): string {
  const text = cursor.takeText();
  return text === '' || (/^[A-Za-z0-9]/.test(text) && text.toLowerCase() !== 'bw') ? text : giveUp();
}
