import type { ExerciseEntry, MuscleShare } from '../model/entry.ts';
import type { Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import { buildName, buildNames } from './build-values.ts';
import {
  type EntryReading,
  type Facts,
  type Holed,
  present,
  spanOf,
  textOf,
  toNumber,
} from './line-reading.ts';

/** What is missing where a word stands alone on its line. */
const EXPECTED = {
  NeedsLine: 'Expected equipment after needs, such as dumbbell, bench',
  AlsoLine: 'Expected another spelling of the name after also',
  EasierLine: 'Expected an easier movement after easier',
  HarderLine: 'Expected a harder movement after harder',
  SetupLine: 'Expected how to set up after setup',
  CueLine: 'Expected what to think of after cue',
  CautionLine: 'Expected what to take care of after caution',
} as const;

/** The property lines of an `exercise`; notes and strays are left to the caller. */
export function buildExerciseFacts(
  reading: EntryReading,
  lines: readonly ast.ExerciseLine[],
): Facts<ExerciseEntry> {
  const trunk: ExerciseEntry['trunk'][number][] = [];
  const muscles: MuscleShare[] = [];
  const lists = { NeedsLine: [], AlsoLine: [], EasierLine: [], HarderLine: [] } as Record<string, Written[]>;
  const texts = { SetupLine: [], CueLine: [], CautionLine: [] } as Record<string, Written[]>;
  const facts: {
    -readonly [K in 'pattern' | 'work' | 'position' | 'repMoves' | 'bodyShare']?: ExerciseEntry[K];
  } = {};
  let countsContacts = false;
  for (const line of lines) {
    if (!line.$cstNode) continue;
    const span = spanOf(line);
    const missing = (message: string): undefined => reading.expect('missing-value', span, message);
    switch (line.$type) {
      case 'PatternLine':
        facts.pattern = readWord(
          reading,
          facts.pattern,
          line,
          'pattern',
          'a pattern after pattern, such as squat',
        );
        break;
      case 'WorkLine':
        facts.work = readWord(
          reading,
          facts.work,
          line,
          'work',
          'a kind of work after work, such as strength',
        );
        break;
      case 'PositionLine':
        facts.position = readWord(
          reading,
          facts.position,
          line,
          'position',
          'a position after position, such as standing',
        );
        break;
      case 'TrunkLine': {
        const { demand } = line;
        const directions = buildNames(line.directions);
        if (!demand || directions.length === 0)
          missing('Expected resists or moves after trunk, and a direction such as flexion');
        else for (const direction of directions) trunk.push({ demand, direction });
        break;
      }
      case 'MusclesLine':
        if (line.muscles.length === 0)
          missing('Expected muscles after muscles, such as quadriceps, adductors 1/2');
        for (const muscle of line.muscles) muscles.push(...buildMuscle(reading, muscle));
        break;
      case 'RepMovesLine':
        if (!reading.once(facts.repMoves, span, 'each rep moves')) break;
        if (line.moves) facts.repMoves = line.moves;
        break;
      case 'BodyShareLine':
        if (!reading.once(facts.bodyShare, span, 'bodyweight')) break;
        if (line.percent === undefined)
          missing('Expected a share of body mass after bodyweight, such as 69%');
        else facts.bodyShare = buildBodyShare(reading, line) ?? facts.bodyShare;
        break;
      case 'CountsLine':
        if (line.what) countsContacts = true;
        else missing('Expected contacts after counts');
        break;
      case 'NeedsLine':
      case 'AlsoLine':
      case 'EasierLine':
      case 'HarderLine':
        if (line.names.length === 0) missing(EXPECTED[line.$type]);
        for (const name of buildNames(line.names)) lists[line.$type]!.push(name);
        break;
      case 'SetupLine':
      case 'CueLine':
      case 'CautionLine':
        if (present(line.text)) texts[line.$type]!.push(buildName(line.text!));
        else missing(EXPECTED[line.$type]);
    }
  }
  return {
    ...dropUndefined(facts),
    trunk,
    muscles,
    countsContacts,
    needs: lists.NeedsLine!,
    also: lists.AlsoLine!,
    easier: lists.EasierLine!,
    harder: lists.HarderLine!,
    setups: texts.SetupLine!,
    cues: texts.CueLine!,
    cautions: texts.CautionLine!,
  };
}

function dropUndefined<T extends object>(facts: T): T {
  return Object.fromEntries(Object.entries(facts).filter(([, value]) => value !== undefined)) as T;
}

/** One word of a line that may stand once. */
function readWord(
  reading: EntryReading,
  before: Written | undefined,
  line: Holed<ast.PatternLine | ast.WorkLine | ast.PositionLine>,
  word: string,
  expected: string,
): Written | undefined {
  const span = spanOf(line);
  if (!reading.once(before, span, word)) return before;
  if (present(line.name)) return buildName(line.name!);
  return reading.expect('missing-value', span, `Expected ${expected}`) ?? before;
}

function buildBodyShare(
  reading: EntryReading,
  line: Holed<ast.BodyShareLine>,
): ExerciseEntry['bodyShare'] | undefined {
  const span = spanOf(line);
  const percent = toNumber(line.percent!);
  if (!reading.accept('bodyPercent', percent, span, `${line.percent}%`)) return undefined;
  const source = present(line.reference) && buildName(line.reference!).text;
  return { share: percent / 100, percent, ...(source && { source }), span };
}

function buildMuscle(reading: EntryReading, node: Holed<ast.Muscle>): MuscleShare[] {
  if (!present(node.name)) return [];
  const name = buildName(node.name!);
  const share = present(node.share);
  if (!share || share.under === undefined || share.over === undefined) return [{ name, share: 1 }];
  const [over, under] = [toNumber(share.over), toNumber(share.under)];
  if (over > 0 && over <= under) return [{ name, share: over / under, fraction: [over, under] }];
  reading.report(
    'out-of-range',
    spanOf(share),
    `${textOf(share)}: the share of an indirect muscle is at most 1, such as 1/2`,
  );
  return [];
}
