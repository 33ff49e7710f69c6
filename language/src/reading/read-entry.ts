import type { LangiumCoreServices } from 'langium';
import type { Entry } from '../model/entry.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { findComment } from '../syntax/scanned-token.ts';
import type { MassUnit } from '../units/mass.ts';
import { buildEntry } from './build-entry.ts';
import { EntryReading } from './line-reading.ts';

/** What one entry's text is read with. */
export interface EntryReader {
  /** Reads the lines of one entry, its header first. Never fails. */
  read(lines: readonly string[], opens: boolean, fileUnit: MassUnit | undefined): Entry;
}

/** Reads entries by the generated parser: the definition of the language. */
export function createEntryReader(services: LangiumCoreServices): EntryReader {
  const parser = services.parser.LangiumParser;
  return {
    read(lines, opens, fileUnit) {
      const result = parser.parse<ast.Practice>(lines.join('\n'), { rule: 'Practice' });
      const broken = new Set<number>();
      const errors = result.parserErrors.map((error) => {
        const token = error.token.startLine && error.token.image ? error.token : (previousOf(error) ?? error.token);
        const line = (token.startLine || 1) - 1;
        broken.add(line);
        const start = Math.max(0, (token.startColumn || 1) - 1);
        return { message: error.message, span: { line, start, end: Math.max(start + 1, token.endColumn ?? start + 1) } };
      });
      const reading = new EntryReading(fileUnit, broken);
      // One complaint a line is enough: what follows the first is mostly its echo.
      const reported = new Set<number>();
      for (const { message, span } of errors) {
        if (reported.has(span.line)) continue;
        reported.add(span.line);
        reading.report('syntax', span, message);
      }
      const first = lines[0] ?? '';
      const frame = {
        lineCount: lines.length,
        header: { line: 0, start: /^\ufeff?/.exec(first)![0].length, end: opens ? first.trimEnd().length : 0 },
        ignores: readIgnores(lines),
      };
      const node = result.value.entries[0] ?? result.value.loose;
      return buildEntry(reading, frame, node ?? ({ $type: 'Loose', lines: [] } as unknown as ast.Loose));
    },
  };
}

function previousOf(error: object) {
  return 'previousToken' in error ? (error.previousToken as { startLine?: number; startColumn?: number; endColumn?: number }) : undefined;
}

/** `# ignore unknown-movement, missing-load` on a line silences those checks there. */
function readIgnores(lines: readonly string[]): Entry['ignores'] {
  return lines.flatMap((text, line) => {
    if (!text.includes('ignore')) return [];
    const match = /^#\s*ignore\s+([\w-]+(?:\s*,\s*[\w-]+)*)/i.exec(text.slice(findComment(text)));
    return match ? [{ line, codes: match[1]!.split(/\s*,\s*/) }] : [];
  });
}
