/** How lines begin that look like a movement's and are none. */
const BEGINNINGS =
  /^(?:[-*•·–—]\s|\d{1,2}[.)]\s|[a-z]\d{1,2}\s*:|[a-z]\s*:\s*[a-z]|(?:coach(?:'s)?\s+)?(?:notes?|comments?|remarks?)\s*:|(?:rpe|s-?rpe|rir|hr|bpm|pulse|bw|tempo|setting|duration|took|weight|weighed|length|skipped|cancell?ed|deload|tm|training\s+max|super|body\s*weight|session\s+rpe|overall\s+rpe|athletes?|client|who|place|location|gym|where|pain|week|wk|emom|amrap|mon|tue|wed|thu|fri|sat|sun|main|strength|power|finisher|accessor|assistance|conditioning|core|mobility|cardio|tabata|warm|cool|starts?|begins?|workout|session|training|\d+\s*rounds?)\b)/iu;

/** Whether a line with a colon may be a slip of another kind of line. The fast reader leaves such lines alone. */
export function mayBeLineSlip(content: string): boolean {
  return BEGINNINGS.test(content);
}
