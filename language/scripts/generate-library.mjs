// Writes the facts of the built-in library, so that nothing parses it when a server or a command starts.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { createEntryReader } from '../src/reading/read-entry.ts';
import { readFile } from '../src/reading/read-file.ts';
import { createSyntaxServices } from '../src/syntax/syntax-services.ts';

const folder = join(import.meta.dirname, '..', 'library');
const reader = createEntryReader(createSyntaxServices);
const files = readdirSync(folder)
  .filter((file) => file.endsWith('.plim'))
  .sort()
  .map((file) => {
    const { model } = readFile(reader, file, readFileSync(join(folder, file), 'utf8'));
    return [basename(file, '.plim'), model.entries];
  });
const out = join(import.meta.dirname, '..', 'src', 'generated');
mkdirSync(out, { recursive: true });
// One string: parsing JSON is faster than running the same as code.
const text = JSON.stringify(JSON.stringify(files));
writeFileSync(
  join(out, 'library-facts.ts'),
  `/** Made by npm run generate from language/library: [name, entries] of each file, as JSON. */\nexport const LIBRARY_FACTS =\n  ${text};\n`,
);
