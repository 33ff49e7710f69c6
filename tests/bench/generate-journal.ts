import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { benchFolder } from './paths.ts';
import { createRandom } from './random.ts';

/** Two spellings of the same double-entry journal, for the programs that it is compared with. */
export type JournalSyntax = 'ledger' | 'beancount';

const ACCOUNTS = [
  'Expenses:Hall',
  'Expenses:Chalk',
  'Expenses:Travel',
  'Expenses:Tea',
  'Income:Coaching',
  'Assets:Cashbox',
];
const PAYEES = ['Belfry Loft', 'Thistledown Barn', 'Rope walk', 'Tea room', 'Ferry office', 'Lamp oil shop'];
const BANK = 'Assets:Bank';
const TRANSACTIONS_A_DAY = 10;
const DAY_MS = 86_400_000;

/** Writes a journal of about that many lines, or takes the one that an earlier run wrote; answers its path. */
export function prepareJournal(lines: number, syntax: JournalSyntax): string {
  const version = createHash('sha256')
    .update(readFileSync(import.meta.filename))
    .digest('hex')
    .slice(0, 8);
  const path = join(benchFolder, `journal-${lines}-${version}.${syntax}`);
  if (!existsSync(path)) {
    mkdirSync(benchFolder, { recursive: true });
    writeFileSync(path, writeJournal(lines, syntax));
  }
  return path;
}

/** Transactions of two postings with a blank line behind each, ten a day: four lines, as in a hand-kept journal. */
export function writeJournal(lines: number, syntax: JournalSyntax): string {
  const random = createRandom(5);
  const transactions = Math.round(lines / 4);
  const first = Date.parse('2026-11-24') - Math.ceil(transactions / TRANSACTIONS_A_DAY) * DAY_MS;
  const parts = [
    syntax === 'beancount' ? openAccounts(toIso(Math.min(first, Date.parse('1990-01-01')))) : '',
  ];
  for (let index = 0; index < transactions; index++) {
    const date = toIso(first + Math.floor(index / TRANSACTIONS_A_DAY) * DAY_MS);
    const payee = `${random.pick(PAYEES)} ${random.integer(1, 40)}`;
    const account = random.pick(ACCOUNTS);
    const amount = `${random.integer(1, 240)}.${random.integer(10, 99)}`;
    const title = syntax === 'beancount' ? `* "${payee}"` : `* ${payee}`;
    parts.push(`${date} ${title}\n    ${account}  ${amount} EUR\n    ${BANK}  -${amount} EUR\n`);
  }
  return parts.join('\n');
}

function openAccounts(date: string): string {
  return [...ACCOUNTS, BANK].map((account) => `${date} open ${account}\n`).join('');
}

function toIso(time: number): string {
  return new Date(time).toISOString().slice(0, 10);
}
