import { CHECKS, type CheckCode, findCheck } from '@plimsoll/language/checks/catalogue';
import { escapeMarkdown, joinLines } from '../../markdown.ts';

/** Why a check is made, where its code stands behind `# ignore`. */
export function hoverCheck(code: string): string | undefined {
  if (!Object.hasOwn(CHECKS, code)) return undefined;
  const { severity, why, source } = findCheck(code as CheckCode);
  return joinLines([
    `**${code}** · ${severity}, ignored here`,
    escapeMarkdown(why),
    source && escapeMarkdown(source),
  ]);
}
