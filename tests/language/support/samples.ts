import { readdirSync, readFileSync } from 'node:fs';

export interface Sample {
  readonly name: string;
  readonly text: string;
}

const ROOT = new URL('../../../', import.meta.url);

/** Every sample and every file of the built-in library, as they stand on the disk. */
export const SAMPLES: readonly Sample[] = ['samples/', 'language/library/'].flatMap((folder) =>
  readdirSync(new URL(folder, ROOT), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.plim'))
    .sort()
    .map((name) => ({ name: folder + name, text: readFileSync(new URL(folder + name, ROOT), 'utf8') })),
);
