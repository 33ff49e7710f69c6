import type { Problem, Written } from '../model/source.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { SIGNS, STOP } from './check-cautions.ts';
import { problem } from './check-context.ts';

/** `knee pain 3/10`, `sore left knee pain`. */
const PAIN = /^([\p{L}\s]*?)\bpain(?:ful)?\b[\s:,]*(?:(10|\d)(?:\s*\/\s*10)?(?!\d))?[\s,]*([\p{L}\s]*)$/iu;
/** `felt faint`, `chest tight`: what calls for more than a note. Breathing drills and heart rates do not. */
const SIGN_IN_WORDS =
  /\b(?:faint(?:ed|ing|s)?|dizz\w*|black(?:ed)?\s*-?out|passed\s+out|breathless\w*|(?:short|shortness)\s+of\s+breath|chest\s+(?:tight\w*|pressure|hurts?|aches?))\b/i;

/** `knee pain 3/10`: pain is never lost among the lines that nothing recognises. */
export function findPain(stray: Written): Problem | undefined {
  const [written, before = '', score, after = ''] = PAIN.exec(stray.text) ?? [];
  if (written === undefined) return undefined;
  const where = [before, after]
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(' ');
  const line = `pain ${score ?? '3'}${where === '' ? '' : ` ${where}`}`;
  const how = `told by a line such as ${line}, from 0 to 10, and where`;
  const message =
    score !== '0' && SIGNS.test(where)
      ? `${capitalise(STOP)}; pain is ${how}`
      : `Pain is ${how}: leave out what brings it on, and ask a licensed practitioner before loading it again`;
  return problem('stray-line', stray.span, message, [
    score === undefined ? undefined : replaceBy(stray.span, line),
  ]);
}

/** `fainted`, `felt dizzy`: kept as a note alone it would be told to nobody. */
export function findSign(stray: Written): Problem | undefined {
  if (!SIGN_IN_WORDS.test(stray.text)) return undefined;
  const message = `${capitalise(STOP)}; pain has a line such as pain 3 and where, words are a note behind >`;
  return problem('stray-line', stray.span, message);
}

function capitalise(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
