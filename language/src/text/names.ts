import { Memo } from './memo.ts';

const forms = new Memo(fold);

/**
 * The form in which names are compared: without regard to case, hyphens, dashes, apostrophe shape or repeated spaces.
 * `Push-Up`, `push up` and `PUSH–UP` are one name; so are `Farmer's Carry` and `Farmer’s carry`.
 */
export function foldName(name: string): string {
  return forms.of(name);
}

function fold(name: string): string {
  return name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\u2018\u2019\u02bc\u2032`´]/g, "'")
    .replace(/[-\u2010-\u2015\u2212\s]+/g, ' ')
    .trim();
}
