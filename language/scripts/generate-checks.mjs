// Writes language/checks.md, the users' reference of all checks, from the table of checks.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { printChecks } from '../src/checks/print-checks.ts';

writeFileSync(join(import.meta.dirname, '..', 'checks.md'), printChecks());
