import type { UnitsEntry } from '../../model/entry.ts';
import type { EntryFrame } from '../build-entry.ts';

/** `units kg` and nothing but blank lines and comments: what most logs begin with. Anything else is left to the parser. */
export function readRegularUnits(lines: readonly string[], frame: EntryFrame): UnitsEntry | undefined {
  const [header, ...rest] = lines;
  if (header !== 'units kg' && header !== 'units lb') return undefined;
  if (!rest.every((line) => /^[ \t]*(?:#(?!\d).*)?$/.test(line))) return undefined;
  const unit = header === 'units kg' ? 'kg' : 'lb';
  return { ...frame, kind: 'units', unit, notes: [], strays: [], problems: [] };
}
