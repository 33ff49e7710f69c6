import type { Problem, Severity } from '../model/source.ts';
import { findNearest } from '../text/edit-distance.ts';
import { CHECKS, type CheckCode } from './catalogue.ts';

/** What a check may be set to: a severity, or nothing told at all. */
export const SEVERITY_CHOICES = ['error', 'warning', 'info', 'hint', 'off'] as const;
export type SeverityChoice = (typeof SEVERITY_CHOICES)[number];

/** By code; a check that is not in it has its usual severity. */
export type Severities = Readonly<Partial<Record<CheckCode, SeverityChoice>>>;

export interface ReadSeverities {
  readonly severities: Severities;
  /** What was not understood, a sentence each. */
  readonly complaints: readonly string[];
}

/** `{ "load-jump": "off" }`, whatever a user wrote: what is no code or no choice is told, and the rest holds. */
export function readSeverities(chosen: unknown): ReadSeverities {
  const pairs =
    typeof chosen === 'object' && chosen !== null && !Array.isArray(chosen) ? Object.entries(chosen) : [];
  const complaints = pairs.flatMap(([code, choice]) => findComplaint(code, choice) ?? []);
  const understood = pairs.filter(([code, choice]) => findComplaint(code, choice) === undefined);
  return { severities: Object.fromEntries(understood), complaints };
}

function findComplaint(code: string, choice: unknown): string | undefined {
  if (!Object.hasOwn(CHECKS, code)) return describeUnknown(code);
  if ((SEVERITY_CHOICES as readonly unknown[]).includes(choice)) return undefined;
  const given = choice === undefined ? 'nothing' : JSON.stringify(choice);
  return `${code} is set to ${SEVERITY_CHOICES.slice(0, -1).join(', ')} or off, not ${given}`;
}

/** `No check is called lod-jump: did you mean load-jump?` */
export function describeUnknown(code: string): string {
  const [nearest] = findNearest(code, Object.keys(CHECKS), 1);
  return `No check is called ${code}${nearest ? `: did you mean ${nearest}?` : ''}`;
}

/** Problems as they are told: each with the severity that was chosen for its code, without those turned off. */
export function applySeverities<T extends { readonly problem: Problem }>(
  found: readonly T[],
  severities: Severities,
): readonly T[] {
  if (Object.keys(severities).length === 0) return found;
  return found.flatMap((each) => {
    const choice = severities[each.problem.code as CheckCode];
    if (choice === undefined) return each;
    return choice === 'off'
      ? []
      : { ...each, problem: { ...each.problem, severity: choice satisfies Severity } };
  });
}
