// Writes language/measures.md, the users' reference of all formulas, from the table of methods.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { printMethods } from '../src/measures/print-methods.ts';

writeFileSync(join(import.meta.dirname, '..', 'measures.md'), printMethods());
