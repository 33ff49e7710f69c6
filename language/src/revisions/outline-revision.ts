/** A revision as it is read, from top to bottom: the same for the terminal and for the editor. */
import {
  headEffect,
  printEffect,
  printMuscleEffect,
  printNoEffect,
  printSessionEffect,
  tabulateEffect,
} from './print-effect.ts';
import type {
  BlockChange,
  DefinitionRevision,
  LineChange,
  PlanEffect,
  PlanRevision,
  Revision,
  SessionRevision,
  TextChange,
  TrainingChanges,
} from './revision.ts';

export interface RevisionSection {
  readonly title: string;
  /** Indented by depth. */
  readonly lines: readonly { readonly depth: number; readonly text: string }[];
  readonly tables: readonly {
    readonly head: readonly string[];
    readonly rows: readonly (readonly string[])[];
  }[];
}

type Line = RevisionSection['lines'][number];

/** `since` names the earlier version: `HEAD`. */
export function outlineRevision(revision: Revision, since: string): RevisionSection[] {
  const files = [...revision.conflicts.map(describeConflict), ...revision.files.map(describeFile)];
  return [
    ...files.map((title): RevisionSection => ({ title, lines: [], tables: [] })),
    ...revision.plans.map((plan) => outlinePlan(plan, since)),
    ...revision.definitions.map(outlineDefinition),
    ...revision.sessions.map((session) => outlineSession(session, since)),
  ];
}

function describeConflict({ path, side, regions }: Revision['conflicts'][number]): string {
  const lines = regions
    .map(({ first, last }) => (first === last ? `${first}` : `${first} to ${last}`))
    .join(', ');
  const when = side === 'before' ? ' before' : '';
  return `${path} holds a merge conflict${when} in lines ${lines}: nothing inside it was compared`;
}

function describeFile(file: Revision['files'][number]): string {
  if (file.change === 'renamed') return `${file.was} is ${file.path} now`;
  return `${file.path} is ${file.change === 'added' ? 'new' : 'gone'}`;
}

const STATE = { added: ', new', removed: ', gone', changed: '' } as const;

function title(kind: string, { name, was, change }: Pick<PlanRevision, 'name' | 'was' | 'change'>): string {
  return `${kind}${name === '' ? '' : ` ${name}`}${was === undefined ? '' : `, before ${was}`}${STATE[change]}`;
}

function outlinePlan(plan: PlanRevision, since: string): RevisionSection {
  const effects = plan.effects.map((effect) => describeEffect(effect, plan, since));
  return {
    title: title('plan', plan),
    lines: [
      ...plan.texts.map((text) => ({ depth: 1, text: printTextChange(text) })),
      ...outlineTraining(plan),
      ...effects.flatMap((texts) => texts.map((text) => ({ depth: 1, text }))),
    ],
    tables: plan.effects.flatMap((effect) => {
      const rows = plan.change === 'changed' ? tabulateEffect(effect) : [];
      return rows.length > 0 ? [{ head: headEffect(effect, plan.effects.length > 1), rows }] : [];
    }),
  };
}

function describeEffect(effect: PlanEffect, { effects }: PlanRevision, since: string): string[] {
  const whom = effects.length > 1 ? `, ${effect.athlete}` : '';
  const effectText = printEffect(effect);
  const muscles = printMuscleEffect(effect);
  return [`since ${since}${whom}: ${effectText || printNoEffect(effect)}`, ...(muscles ? [muscles] : [])];
}

/** Day by day where there are days: its blocks, then its lines. */
function outlineTraining({ blocks, lines }: TrainingChanges): Line[] {
  const days = [...new Set([...blocks, ...lines].map(({ day }) => day))].sort(compareDays);
  return days.flatMap((day) => {
    const depth = day === '' ? 1 : 2;
    return [
      ...(day === '' ? [] : [{ depth: 1, text: day }]),
      ...blocks
        .filter((block) => block.day === day)
        .map((block) => ({ depth, text: printBlockChange(block) })),
      ...lines.filter((line) => line.day === day).map((line) => ({ depth, text: printLineChange(line) })),
    ];
  });
}

function compareDays(a: string, b: string): number {
  const number = (day: string): number => Number(/\d+/.exec(day)?.[0] ?? 0);
  return number(a) - number(b);
}

function outlineDefinition(definition: DefinitionRevision): RevisionSection {
  const { kind, path } = definition;
  return {
    title:
      kind === 'units' || definition.name === ''
        ? title(`${kind} of ${path}`, definition)
        : title(kind, definition),
    lines: definition.texts.map((text) => ({ depth: 1, text: printTextChange(text) })),
    tables: [],
  };
}

function outlineSession(session: SessionRevision, since: string): RevisionSection {
  const { effects } = session;
  const sums = effects.flatMap((effect) => {
    const text = printSessionEffect(effect);
    return text ? [`since ${since}${effects.length > 1 ? `, ${effect.athlete}` : ''}: ${text}`] : [];
  });
  return {
    title: title('session', session),
    lines: [
      ...session.texts.map((text) => ({ depth: 1, text: printTextChange(text) })),
      ...outlineTraining(session),
      ...sums.map((text) => ({ depth: 1, text })),
    ],
    tables: [],
  };
}

/** `weeks 6 → 8`: the words that both begin with are said once. */
export function printTextChange({ before, after }: TextChange): string {
  if (before === undefined) return `+ ${after}`;
  if (after === undefined) return `- ${before}`;
  const [was, is] = [before.split(' '), after.split(' ')];
  const first = was.findIndex((word, index) => word !== is[index]);
  const shared = Math.min(first < 0 ? was.length - 1 : first, is.length - 1);
  // Never from within a list: of `for Ada Elm, Bo Ash` that becomes `for Ada Elm` the whole name is said.
  const isList = before.includes(', ') !== after.includes(', ');
  const kept = isList ? 1 : shared;
  return `${was.join(' ')} → ${is.slice(Math.min(kept, shared)).join(' ')}`;
}

function printBlockChange({ kind, block, texts }: BlockChange): string {
  const printed = texts.map((text) =>
    kind === 'changed' ? printTextChange(text) : (text.after ?? text.before),
  );
  switch (kind) {
    case 'added':
      return `+ ${block}${printBehind(printed)}`;
    case 'removed':
      return `- ${block}${printBehind(printed)}`;
    case 'reordered':
      return `${block}: order ${texts[0]?.before} → ${texts[0]?.after}`;
    case 'changed':
      return `${block}: ${printed.join(', ')}`;
  }
}

function printBehind(settings: readonly (string | undefined)[]): string {
  return settings.length > 0 ? `, ${settings.join(', ')}` : '';
}

/** `Back Squat: 3x5 → 4x5 @ 70%`, `+ Plank: 3x30 s`, `Push-up in place of Dip: 8 → 12`, `Row: from day 2 to here`. */
export function printLineChange({ kind, movement, was, from, prefix, text }: LineChange): string {
  const name = prefix ? `${prefix} ${movement}` : movement;
  switch (kind) {
    case 'added':
      return `+ ${name}: ${text}`;
    case 'removed':
      return `- ${name}: ${text}`;
    case 'swapped':
      return `${name} in place of ${was}${text ? `: ${text}` : ''}`;
    case 'moved':
      return `${name}: moved here from ${from}${text ? `, ${text}` : ''}`;
    case 'changed':
      return `${name}: ${text}`;
  }
}
