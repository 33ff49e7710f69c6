import { createHash } from 'node:crypto';
import { mkdir, readFile, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { FileProblem } from '@plimsoll/language/checks/check-file';
import type { FileOutline } from '@plimsoll/language/checks/file-outline';

const NAME = 'plimsoll-check.json';

/** What earlier runs found out: by the hash of a content its outline, by the hash of all it rests on its problems. */
interface Contents {
  readonly outlines: Readonly<Record<string, FileOutline>>;
  readonly problems: Readonly<Record<string, readonly FileProblem[]>>;
}

const NOTHING: Contents = { outlines: {}, problems: {} };

/**
 * Remembers in a folder what a check found, keyed by content alone: whatever differs has another key. A file that is
 * missing, cut off, changed or of another program is as good as none, and is written anew.
 */
export class CheckCache {
  readonly #file: string;
  readonly #program: string;
  readonly #before: Contents;
  readonly #outlines: Record<string, FileOutline> = {};
  readonly #problems: Record<string, readonly FileProblem[]> = {};
  #isNew = false;

  private constructor(file: string, program: string, before: Contents) {
    this.#file = file;
    this.#program = program;
    this.#before = before;
  }

  /** Of a folder that need not exist. */
  static async open(folder: string): Promise<CheckCache> {
    const program = await hashProgram();
    const file = join(folder, NAME);
    return new CheckCache(file, program, (await readContents(file, program)) ?? NOTHING);
  }

  /** The outline of a content, by `find` if it is new. */
  outline(content: string, find: () => FileOutline): FileOutline {
    const outline = this.#before.outlines[content] ?? this.#note(find());
    this.#outlines[content] = outline;
    return outline;
  }

  /** The problems that a key stands for, by `find` if it is new. */
  problems(key: string, find: () => readonly FileProblem[]): readonly FileProblem[] {
    const problems = this.#before.problems[key] ?? this.#note(find());
    this.#problems[key] = problems;
    return problems;
  }

  /** Keeps what this run asked for, and forgets the rest. A folder that cannot be written to is no failure. */
  async close(): Promise<void> {
    if (!this.#isNew) return;
    const body = JSON.stringify({ outlines: this.#outlines, problems: this.#problems } satisfies Contents);
    const whole = `${sign(this.#program, body)}\n${body}`;
    const part = `${this.#file}.${process.pid}`;
    try {
      await mkdir(join(this.#file, '..'), { recursive: true });
      await writeFile(part, whole);
      await rename(part, this.#file);
    } catch {
      // The next run finds nothing, and looks again.
    }
  }

  #note<T>(value: T): T {
    this.#isNew = true;
    return value;
  }
}

export function hash(...texts: readonly string[]): string {
  const digest = createHash('sha256');
  // Lengths keep `ab, c` and `a, bc` apart.
  for (const text of texts) digest.update(`${text.length}\n`).update(text);
  return digest.digest('base64url');
}

/** The first line vouches for the rest. */
function sign(program: string, body: string): string {
  return hash('plimsoll check cache', program, body);
}

async function readContents(file: string, program: string): Promise<Contents | undefined> {
  try {
    const whole = await readFile(file, 'utf8');
    const end = whole.indexOf('\n');
    const body = whole.slice(end + 1);
    return whole.slice(0, end) === sign(program, body) ? JSON.parse(body) : undefined;
  } catch {
    return undefined;
  }
}

/** What another version of this program found may be wrong by now. */
async function hashProgram(): Promise<string> {
  try {
    // The bundle's own file: what was started only starts it. Where nothing is bundled, what was started.
    const file = typeof __filename === 'string' ? __filename : (process.argv[1] ?? '');
    return hash(await readFile(file, 'latin1'));
  } catch {
    return '';
  }
}
