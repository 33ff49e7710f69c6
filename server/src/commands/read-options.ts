import { parseArgs } from 'node:util';
import { type IsoDate, parseIsoDate } from '@plimsoll/language/calendar/iso-date';
import { Misuse } from './misuse.ts';

/** Options of a command that take a value, with the values that they may take if not any; a `list` may be repeated. */
export type OptionTable<Name extends string> = Readonly<Record<Name, readonly string[] | 'any' | 'list'>>;

export interface Options<Name extends string> {
  /** The parts of a list stand between commas, however often it was given. */
  readonly values: Readonly<Partial<Record<Name, string>>>;
  readonly paths: readonly string[];
  readonly help: boolean;
}

/** `['samples', '--format', 'json']` → paths and values; anything unknown is a misuse that says what is known. */
export function readOptions<Name extends string>(
  command: string,
  args: readonly string[],
  table: OptionTable<Name>,
): Options<Name> {
  const names = Object.keys(table) as Name[];
  const known = names.map((name) => `--${name}`).join(', ');
  const options = Object.fromEntries(
    names.map((name) => [name, { type: 'string' as const, multiple: table[name] === 'list' }]),
  );
  const { values, positionals } = parse();
  const given = Object.fromEntries(
    Object.entries(values).map(([name, value]) => [name, Array.isArray(value) ? value.join(',') : value]),
  ) as Options<Name>['values'];
  for (const name of names) {
    const [value, allowed] = [given[name], table[name]];
    if (value === undefined || typeof allowed === 'string' || allowed.includes(value)) continue;
    throw new Misuse(`--${name} is ${allowed.join(' or ')}, not "${value}".`);
  }
  return { values: given, paths: positionals, help: values.help === true };

  function parse() {
    try {
      return parseArgs({
        args: [...args],
        options: { ...options, help: { type: 'boolean', short: 'h' } },
        allowPositionals: true,
      });
    } catch (error) {
      const name = /'(-[^\s'<]*)/.exec((error as Error).message)?.[1] ?? '';
      const bare = name.replace(/^-+/, '').split('=')[0] as Name;
      throw new Misuse(
        names.includes(bare)
          ? `--${bare} needs a value${typeof table[bare] === 'string' ? '' : `: ${table[bare].join(' or ')}`}.`
          : `plimsoll ${command} has no option ${name}: it takes ${known} and --help.`,
      );
    }
  }
}

/** The day that `--today` names, else the one that it is. */
export function readToday(text: string | undefined, today: IsoDate): IsoDate {
  if (text === undefined) return today;
  const date = parseIsoDate(text);
  if (date === undefined) throw new Misuse(`--today is a date such as 2026-11-24, not "${text}".`);
  return date;
}
