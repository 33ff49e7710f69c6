/** How lines begin that look like a movement's and are none. */
const BEGINNINGS =
  /^(?:[-*•·–—]\s|\d{1,2}[.)]\s|[a-z]\d{1,2}\s*:|[a-z]\s*:\s*[a-z]|(?:coach(?:'s)?\s+)?(?:notes?|comments?|remarks?)\s*:|(?:rpe|s-?rpe|rir|hr|bpm|pulse|bw|tempo|setting|duration|took|weight|weighed|length|skipped|cancell?ed|deload|tm|training\s+max|super|body\s*weight|session\s+rpe|overall\s+rpe|athletes?|client|who|place|location|gym|where|pain|weeks?|wk|w\s*\/?\s*u|block\s+[a-z](?=\s*:)|test(?=\s*[:–—])|emom|amrap|effort|mon|tue|wed|thu|fri|sat|sun|main|strength|power|finisher|accessor|assistance|conditioning|core|mobility|cardio|tabata|warm|cool|starts?|begins?|workout|session|training|\d+\s*rounds?)\b|(?:weeks?|wk)\.?\s*\d|[a-z]\d{1,2}\s+w\s*\/?\s*u\b)/iu;

/**
 * Behind a name, its colon first: a number without a unit before one that has a unit of distance or calories, or metres with
 * three decimals: `Rower: 500, 500 m`, `Run: 5,2 km`, `Rower: 1.000 m`.
 */
export const UNIT_BEHIND =
  /(?:^:|,)\s*(?:\d+\s*[x×]\s*)?\d+\s*(?:,\s*(?:\d+\s*[x×]\s*)?\d+\s*(?:k?m|yd|mi|cal)|\.\d{3}\s*m)\b/i;

/** Whether a line with a colon may be a slip of another kind of line. The fast reader leaves such lines alone. */
export function mayBeLineSlip(content: string): boolean {
  return BEGINNINGS.test(content);
}
