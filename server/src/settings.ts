import { readSeverities, type Severities } from '@plimsoll/language/checks/severities';
import {
  DEFAULT_FORMULA,
  ONE_REP_MAX_FORMULA_IDS,
  type OneRepMaxFormula,
} from '@plimsoll/language/measures/one-rep-max';

/** What the user chose, with the names that the measures use. */
export interface Settings {
  readonly lenses: 'all' | 'blocks' | 'sessions' | 'none';
  readonly hints: boolean;
  /** The plates of each side, among the hints. */
  readonly plates: boolean;
  readonly formula: OneRepMaxFormula;
  readonly unit: 'kg' | 'lb';
  /** Of checks, where they are not the usual ones. */
  readonly severities: Severities;
}

export const DEFAULT_SETTINGS: Settings = {
  lenses: 'all',
  hints: true,
  plates: false,
  formula: DEFAULT_FORMULA,
  unit: 'kg',
  severities: {},
};

/** The section `plimsoll` as an editor sends it, whatever is in it. What is none of the choices is as if not set. */
export function readSettings(section: unknown): Settings {
  const read = (...path: string[]) => readPath(section, path);
  const choose = <T>(value: unknown, choices: readonly T[], usual: T): T =>
    choices.includes(value as T) ? (value as T) : usual;
  return {
    lenses: choose(read('lenses', 'show'), ['all', 'blocks', 'sessions', 'none'], DEFAULT_SETTINGS.lenses),
    hints: choose(read('hints', 'show'), [true, false], DEFAULT_SETTINGS.hints),
    plates: choose(read('hints', 'plates'), [true, false], DEFAULT_SETTINGS.plates),
    formula: choose(read('estimatedMax', 'formula'), ONE_REP_MAX_FORMULA_IDS, DEFAULT_SETTINGS.formula),
    unit: choose(read('display', 'unit'), ['kg', 'lb'], DEFAULT_SETTINGS.unit),
    severities: readSeverities(read('checks', 'severity')).severities,
  };
}

/** What of the section cannot be taken as it was written, a sentence each: a mistyped code would change nothing. */
export function complainOfSettings(section: unknown): readonly string[] {
  return readSeverities(readPath(section, ['checks', 'severity'])).complaints;
}

function readPath(section: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (value as Record<string, unknown> | undefined)?.[key],
    section ?? {},
  );
}
