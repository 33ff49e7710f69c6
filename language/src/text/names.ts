/** Spellings whose form is remembered: more than a practice has movements, athletes and places. */
const MOST_SPELLINGS = 20_000;
const forms = new Map<string, string>();

/**
 * The form in which names are compared: without regard to case, hyphens, dashes, apostrophe shape or repeated spaces.
 * `Push-Up`, `push up` and `PUSH–UP` are one name; so are `Farmer's Carry` and `Farmer’s carry`.
 */
export function foldName(name: string): string {
  const known = forms.get(name);
  if (known !== undefined) return known;
  if (forms.size >= MOST_SPELLINGS) forms.clear();
  const form = fold(name);
  forms.set(name, form);
  return form;
}

function fold(name: string): string {
  return name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\u2018\u2019\u02bc\u2032`´]/g, "'")
    .replace(/[-\u2010-\u2015\u2212\s]+/g, ' ')
    .trim();
}
