/** What an item stands for; an editor chooses a symbol by it. */
export type CompletionKind =
  | 'template'
  | 'header'
  | 'block'
  | 'property'
  | 'keyword'
  | 'movement'
  | 'athlete'
  | 'place'
  | 'plan'
  | 'sets'
  | 'load'
  | 'value'
  | 'unit'
  | 'date';

/** One thing that may be accepted at the cursor. */
export interface CompletionItem {
  readonly label: string;
  readonly kind: CompletionKind;
  /** A few words behind the label: `12 Nov: 3x5 @ 82.5 kg`. Plain text. */
  readonly detail?: string;
  /** A sentence on a word of the notation, in Markdown. */
  readonly help?: string;
  /** What a coach wrote, to be shown as plain text. */
  readonly words?: string;
  /** What stands in the text after accepting; with `isSnippet` in the editor protocol's snippet syntax. */
  readonly insert: string;
  readonly isSnippet: boolean;
  /** UTF-16 columns of the line that it takes the place of: they hold the cursor. */
  readonly replace: { readonly start: number; readonly end: number };
  /** Items in order of this text are in order of likelihood. */
  readonly sortKey: string;
  /** What the typed text is compared with. */
  readonly filterText: string;
  /** Behind it something must follow, so the editor asks again at once. */
  readonly continues: boolean;
}

/** An item before it is known how it stands among the others. `insert` is the label where nothing else is said. */
export interface Offer {
  readonly label: string;
  readonly kind: CompletionKind;
  readonly detail?: string | undefined;
  readonly help?: string | undefined;
  readonly words?: string | undefined;
  readonly insert?: string;
  readonly snippet?: string;
  /** Other spellings under which it is found. */
  readonly also?: readonly string[];
  readonly continues?: boolean;
  /** What the coach is warned of comes behind what fits as well. */
  readonly isWarned?: boolean;
}

/** What a place of the line may hold, most likely first, and the columns that an accepted one replaces. */
export interface Offers {
  readonly start: number;
  readonly end: number;
  readonly offers: readonly Offer[];
}

/** A snippet's text that stands for itself. */
export function escapeSnippet(text: string): string {
  return text.replace(/[\\$}]/g, '\\$&');
}

/** Text with `‹…›` around what the coach is likely to change: `‹3› rounds` → `${1:3} rounds`; equal ones change together. */
export function toSnippet(text: string): string {
  const stops = new Map<string, number>();
  return escapeSnippet(text).replace(/‹([^›]*)›/g, (_all, inner: string) => {
    const known = stops.get(inner);
    if (known !== undefined) return `$${known}`;
    stops.set(inner, stops.size + 1);
    return `\${${stops.size}:${inner}}`;
  });
}

/** Turns offers into items: those that the typed text may still become, the best fitting first. */
export function toItems({ start, end, offers }: Offers, typed: string): CompletionItem[] {
  const wanted = fold(typed.trimStart());
  const fitting = offers.flatMap((offer, rank) => {
    const filterText = writeFilterText(offer);
    const fit = measureFit(fold(filterText), wanted);
    return fit === undefined ? [] : [{ offer, filterText, fit, rank }];
  });
  // What the coach is warned of comes behind what fits as well, and before what hardly fits.
  const order = ({ fit, offer }: { fit: number; offer: Offer }): number =>
    fit === 2 ? 4 : fit + (offer.isWarned ? 2 : 0);
  fitting.sort(
    (a, b) =>
      order(a) - order(b) ||
      Number(a.offer.isWarned ?? false) - Number(b.offer.isWarned ?? false) ||
      a.rank - b.rank,
  );
  return fitting.map(({ offer, filterText }, index) => ({
    label: offer.label,
    kind: offer.kind,
    ...(offer.detail && { detail: offer.detail }),
    ...(offer.help && { help: offer.help }),
    ...(offer.words && { words: offer.words }),
    insert: offer.snippet ?? offer.insert ?? offer.label,
    isSnippet: offer.snippet !== undefined,
    replace: { start, end },
    sortKey: String(index).padStart(4, '0'),
    filterText,
    continues: offer.continues ?? false,
  }));
}

/** Whether what is typed may become an offer of that folded text: of those that it may not, nothing else need be known. */
export function mayBecome(typed: string): (folded: string) => boolean {
  const wanted = fold(typed.trimStart());
  return (folded) => measureFit(folded, wanted) !== undefined;
}

/** What the typed text is compared with, folded. */
export function foldFilterText(offer: Pick<Offer, 'label' | 'also'>): string {
  return fold(writeFilterText(offer));
}

function writeFilterText({ label, also = [] }: Pick<Offer, 'label' | 'also'>): string {
  return [label, ...also].join(' ');
}

function fold(text: string): string {
  return text.normalize('NFC').toLowerCase();
}

/**
 * 0 where the text begins so, 1 where a word of it does, 2 where the letters follow one another with gaps: editors
 * find those too, and never ask again while the word grows. Undefined where it cannot become the text.
 */
function measureFit(text: string, wanted: string): number | undefined {
  if (text.startsWith(wanted)) return 0;
  const at = text.indexOf(wanted);
  if (at > 0 && /[^\p{L}\p{M}\p{N}]/u.test(text[at - 1]!)) return 1;
  let from = 0;
  for (const letter of wanted) {
    const found = text.indexOf(letter, from);
    if (found < 0) return undefined;
    from = found + letter.length;
  }
  return 2;
}
