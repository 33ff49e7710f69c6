import type { Problem, Written } from '../model/source.ts';
import type { Practice } from '../practice/practice.ts';
import { replaceBy } from '../reading/line-reading.ts';
import { problem } from './check-context.ts';

const NAME_AND_DATE = /^(\p{Lu}[^\d:,@|]*?)[\s,–—-]+(\d{4}-\d\d-\d\d)(?:[\s–—:-]*$|(\s+at\s.*|,.*))/u;
const DATE_LIKE = /(?<!\d)(?:\d{4}([./-])\d{1,2}\1\d{1,2}|\d{1,2}([./-])\d{1,2}\2\d{2,4})(?!\d)/;

/** `session next week`: no header, so that what stands below it goes to the entry above. */
export function findSessionWithoutDate(stray: Written): Problem | undefined {
  const isOne = stray.span.start === 0 ? /^session\s/ : /^[-*#\s]*session\s+(?:\p{Lu}|\d|to(?:day|night)\b)/u;
  if (!isOne.test(stray.text)) return undefined;
  const message =
    'No session begins here, so the lines below count to the entry above: write its date first, such as session 2026-11-17';
  return problem('stray-line', stray.span, message);
}

/** `Mara Zog 2026-11-24`: who and when, but no header. */
export function findNameAndDate(stray: Written, practice: Practice): Problem | undefined {
  const [written, name, date, rest = ''] = NAME_AND_DATE.exec(stray.text) ?? [];
  if (written === undefined || !practice.findAthlete(name!)) return undefined;
  const line = `session ${date} ${name}${rest}`;
  const message = `No session begins here, so the lines below count to the entry above until it is corrected: write ${line}`;
  return problem('stray-line', stray.span, message, [replaceBy({ ...stray.span, start: 0 }, line)]);
}

/** `2026-13-40 Mara Zog`: whatever it is, it is no note. */
export function findNamedDate(stray: Written): Problem | undefined {
  if (!DATE_LIKE.test(stray.text) || !/\p{Lu}\p{Ll}/u.test(stray.text)) return undefined;
  const message =
    'Nothing recognises this line, so it counts nowhere: a session begins with the word session, a date and an athlete';
  return problem('stray-line', stray.span, message);
}
