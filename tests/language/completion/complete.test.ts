import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { complete } from '@plimsoll/language/completion/complete';
import type { CompletionItem } from '@plimsoll/language/completion/item';
import { SessionWorks } from '@plimsoll/language/measures/session-work';
import { expect, test } from 'vitest';
import { readCursor } from '../../server/support/at-cursor.ts';
import { openPractice, TODAY, toUri } from '../checks/workspace.ts';
import { acceptInto } from './accept.ts';
import { LAMP_ROOM } from './lamp-room.ts';

const SESSION = 'session 2026-11-24 Ottilie Marrow at Lamp Room';
/** So many of the offers are named in the table. */
const NAMED = 4;

const practice = openPractice(LAMP_ROOM);
const works = new SessionWorks(practice);
const NOW = toUri('now.plim');

/** What is offered at the cursor of a text that is a file of its own, beside those of the practice. */
function ask(marked: string): { items: readonly CompletionItem[]; line: string } {
  const { text, line, character } = readCursor(marked);
  practice.setFile(NOW, text);
  const items = complete(works, NOW, line, character, { today: TODAY });
  practice.removeFile(NOW);
  return { items, line: text.split('\n')[line]! };
}

const print = ({ label, detail }: CompletionItem): string => (detail ? `${label} (${detail})` : label);

interface Case {
  readonly name: string;
  readonly marked: string;
  readonly offers: readonly string[];
  readonly accepted: string;
}

/** The cases of cursors.txt, which says how they are written. */
function readCases(): Case[] {
  const text = readFileSync(join(import.meta.dirname, 'cursors.txt'), 'utf8');
  const [, ...parts] = text.split(/^== /m);
  return parts.map((part) => {
    const [name, ...lines] = part.replace(/\n(?:\n#.*)?\s*$/, '').split('\n');
    const offers = lines.filter((line) => line.startsWith('- ')).map((line) => line.slice(2));
    const accepted = lines
      .find((line) => line.startsWith('=>'))!
      .slice(2)
      .trim();
    const marked = lines
      .filter((line) => !/^(?:- |=>)/.test(line))
      .join('\n')
      .replace('[session]', SESSION)
      .replace('[planned]', 'session 2026-11-09 Ottilie Marrow at Lamp Room, Low Tide week 2 day 1');
    return { name: name!, marked, offers, accepted };
  });
}

test.each(readCases())('$name', ({ marked, offers, accepted }) => {
  const { items, line } = ask(marked);
  expect(items.slice(0, NAMED).map(print)).toEqual(offers);
  expect(items[0] ? acceptInto(line, items[0]).trim() : '').toBe(accepted);
});

test('the table holds cursors of all kinds', () => {
  expect(readCases().length).toBeGreaterThan(100);
});

test('items stand in the order of their sort keys', () => {
  const { items } = ask(`${SESSION}\n  <|>`);
  const keys = items.map(({ sortKey }) => sortKey);
  expect(keys).toEqual(keys.toSorted());
});

test('a file that nobody has read is empty', () => {
  expect(complete(works, toUri('none.plim'), 0, 0, { today: TODAY }).map(print)).toContain(
    'first day (an athlete, and a session of today)',
  );
});

test('the template of a first day is read without a problem', () => {
  const { items, line } = ask('<|>');
  const template = items.find(({ kind }) => kind === 'template')!;
  const fresh = openPractice(acceptInto(line, template));
  const problems = fresh.file(toUri('log.plim'))!.model.entries.flatMap(({ entry }) => entry.problems);
  expect(problems).toEqual([]);
});

test('a practice that was kept offers after each edit what a fresh one does', () => {
  const days = ['2026-11-02', '2026-11-04', '2026-11-06', '2026-11-09'];
  const write = (day: string, isPrepared: boolean): string =>
    `session ${day} Ottilie Marrow\n${isPrepared ? '  warmup\n    Back Squat: 5 @ 42.5 kg\n' : ''}  A straight\n    Back Squat: 5 @ 80 kg\n`;
  const logs = [undefined, days[0], days[2], days[1], days[3], undefined].map((prepared) =>
    days.map((day) => write(day, day === prepared)).join('\n'),
  );
  const askAll = (open: (log: string) => SessionWorks): string[][] =>
    logs.flatMap((log) => {
      const asked = open(log);
      return ['2026-11-05', '2026-11-10'].map((now) => {
        const { text, line, character } = readCursor(
          `session ${now} Ottilie Marrow\n  warmup\n    Back Squat: <|>`,
        );
        asked.practice.setFile(NOW, text);
        return complete(asked, NOW, line, character, { today: TODAY }).map(print);
      });
    });
  const kept = new SessionWorks(openPractice(''));
  const offers = askAll((log) => {
    kept.practice.setFile(toUri('log.plim'), log);
    return kept;
  });
  expect(offers).toEqual(askAll((log) => new SessionWorks(openPractice(log))));
  // The warm-up of each of four days, and where there is none yet the work of 4 and 9 November.
  expect(new Set(offers.map(([first]) => first)).size).toBe(6);
});
