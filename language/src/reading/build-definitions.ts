import type { AthleteEntry, ExerciseEntry, MassRange, MuscleShare, PlaceEntry } from '../model/entry.ts';
import type { Mass } from '../model/quantity.ts';
import type { Span, Written } from '../model/source.ts';
import type * as ast from '../syntax/generated/ast.ts';
import type { MassUnit } from '../units/mass.ts';
import { UNIT_WORDS } from '../vocabulary/unit-words.ts';
import { buildLoad } from './build-load.ts';
import { reportRepeated } from './build-session-facts.ts';
import { buildSet } from './build-sets.ts';
import { buildDate, buildMass, buildName, type LineUnits, readLineUnits } from './build-values.ts';
import { type EntryReading, spanOf, textOf, toNumber } from './line-reading.ts';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };
type Facts<T> = Mutable<Omit<T, 'kind' | 'lineCount' | 'header' | 'notes' | 'strays' | 'problems' | 'ignores' | 'name'>>;

const names = (list: readonly ast.Name[]): Written[] => list.filter((name) => name.$cstNode).map(buildName);

/** The property lines of an `exercise`; notes and strays are left to the caller. */
export function buildExerciseFacts(reading: EntryReading, lines: readonly ast.ExerciseLine[]): Facts<ExerciseEntry> {
  const facts: Facts<ExerciseEntry> = {
    trunk: [],
    muscles: [],
    needs: [],
    countsContacts: false,
    also: [],
    easier: [],
    harder: [],
    setups: [],
    cues: [],
    cautions: [],
  };
  for (const line of lines) {
    if (!line.$cstNode) continue;
    const span = spanOf(line);
    const missing = expectValue(reading, span);
    switch (line.$type) {
      case 'PatternLine':
        reportRepeated(reading, facts.pattern, span, 'pattern');
        if (line.name) facts.pattern = buildName(line.name);
        else missing('Expected a pattern such as squat');
        break;
      case 'WorkLine':
        reportRepeated(reading, facts.work, span, 'work');
        if (line.name) facts.work = buildName(line.name);
        else missing('Expected a kind of work such as strength');
        break;
      case 'PositionLine':
        reportRepeated(reading, facts.position, span, 'position');
        if (line.name) facts.position = buildName(line.name);
        else missing('Expected a position such as standing');
        break;
      case 'TrunkLine': {
        const { demand } = line;
        if (!demand || line.directions.length === 0) missing('Expected resists or moves, and a direction such as flexion');
        else facts.trunk = [...facts.trunk, ...names(line.directions).map((direction) => ({ demand, direction }))];
        break;
      }
      case 'MusclesLine':
        if (line.muscles.length === 0) missing('Expected muscles such as quadriceps, adductors 1/2');
        facts.muscles = [...facts.muscles, ...line.muscles.flatMap((muscle) => buildMuscle(reading, muscle))];
        break;
      case 'NeedsLine':
        if (line.names.length === 0) missing('Expected equipment such as dumbbell, bench');
        facts.needs = [...facts.needs, ...names(line.names)];
        break;
      case 'RepMovesLine':
        if (line.moves) facts.repMoves = line.moves;
        break;
      case 'BodyShareLine':
        if (line.percent === undefined) missing('Expected a share of body mass such as 69%');
        else if (reading.accept('percent', toNumber(line.percent), span, `${line.percent}%`)) {
          const percent = toNumber(line.percent);
          const source = line.reference?.$cstNode ? buildName(line.reference).text : undefined;
          facts.bodyShare = { share: percent / 100, percent, ...(source && { source }), span };
        }
        break;
      case 'CountsLine':
        facts.countsContacts = true;
        break;
      case 'AlsoLine':
        facts.also = [...facts.also, ...names(line.names)];
        break;
      case 'EasierLine':
        facts.easier = [...facts.easier, ...names(line.names)];
        break;
      case 'HarderLine':
        facts.harder = [...facts.harder, ...names(line.names)];
        break;
      case 'SetupLine':
        if (line.text) facts.setups = [...facts.setups, buildName(line.text)];
        break;
      case 'CueLine':
        if (line.text) facts.cues = [...facts.cues, buildName(line.text)];
        break;
      case 'CautionLine':
        if (line.text) facts.cautions = [...facts.cautions, buildName(line.text)];
        break;
    }
  }
  return facts;
}

function expectValue(reading: EntryReading, span: Span): (message: string) => void {
  return (message) => {
    if (!reading.broken.has(span.line)) reading.report('missing-value', span, message);
  };
}

function buildMuscle(reading: EntryReading, node: ast.Muscle): MuscleShare[] {
  if (!node.name?.$cstNode) return [];
  const name = buildName(node.name);
  if (!node.share?.$cstNode || node.share.under === undefined) return [{ name, share: 1 }];
  const [over, under] = [toNumber(node.share.over), toNumber(node.share.under)];
  if (under === 0 || over > under || over === 0) {
    reading.report('out-of-range', spanOf(node.share), `${textOf(node.share)}: a share lies between 0 and 1, such as 1/2`);
    return [];
  }
  return [{ name, share: over / under, fraction: [over, under] }];
}

/** The inventory of a `place`. A bare number takes the unit of its line. */
export function buildPlaceFacts(reading: EntryReading, lines: readonly ast.PlaceLine[]): Facts<PlaceEntry> {
  const facts: Facts<PlaceEntry> = { bars: [], plates: [], dumbbells: [], kettlebells: [], stacks: [], has: [] };
  for (const line of lines) {
    if (!line.$cstNode) continue;
    const missing = expectValue(reading, spanOf(line));
    const units = readLineUnits(line);
    switch (line.$type) {
      case 'BarsLine':
        if (line.masses.length === 0) missing('Expected weights such as 20 kg, 10 kg');
        facts.bars = [...facts.bars, ...masses(reading, units, line.masses)];
        break;
      case 'PlatesLine':
        if (line.plates.length === 0) missing('Expected plates such as 2x20, 4x10 kg');
        facts.plates = [...facts.plates, ...line.plates.flatMap((plate) => buildPlates(reading, units, plate))];
        break;
      case 'CollarsLine': {
        const mass = buildMass(reading, units, line.mass);
        if (!line.mass) missing('Expected a weight such as 2.5 kg');
        if (mass) facts.collars = mass;
        break;
      }
      case 'DumbbellsLine':
        if (line.ranges.length === 0) missing('Expected a range such as 4-32 by 2 kg');
        facts.dumbbells = [...facts.dumbbells, ...line.ranges.flatMap((range) => buildRange(reading, units, range) ?? [])];
        break;
      case 'KettlebellsLine':
        if (line.masses.length === 0) missing('Expected weights such as 16 kg, 24 kg');
        facts.kettlebells = [...facts.kettlebells, ...masses(reading, units, line.masses)];
        break;
      case 'StacksLine': {
        const range = line.range?.$cstNode ? buildRange(reading, units, line.range) : undefined;
        if (!line.name?.$cstNode || !line.range) missing('Expected a name and a range such as 5-100 by 5 kg');
        else if (range) facts.stacks = [...facts.stacks, { ...range, name: buildName(line.name) }];
        break;
      }
      case 'HasLine':
        if (line.names.length === 0) missing('Expected equipment such as bench, mat');
        facts.has = [...facts.has, ...names(line.names)];
        break;
    }
  }
  return facts;
}

function masses(reading: EntryReading, units: LineUnits, nodes: readonly ast.Mass[]): Mass[] {
  return nodes.map((node) => buildMass(reading, units, node)).filter((mass) => mass !== undefined);
}

function buildPlates(reading: EntryReading, units: LineUnits, node: ast.Mass) {
  const mass = buildMass(reading, units, node);
  const count = node.count === undefined ? 1 : toNumber(node.count);
  return mass && reading.accept('sets', count, spanOf(node), textOf(node)) ? [{ count, mass }] : [];
}

/** `4-32 by 2 kg pairs`: the unit stands once, at the end. */
function buildRange(reading: EntryReading, units: LineUnits, node: ast.MassRange): MassRange | undefined {
  const [low, high] = [buildMass(reading, units, node.low), buildMass(reading, units, node.high)];
  const step = node.step ? buildMass(reading, units, node.step) : low && { grams: 1000, written: 1, unit: low.unit as MassUnit };
  if (!low || !high || !step) return undefined;
  if (low.grams > high.grams || step.grams <= 0) {
    reading.report('range-order', spanOf(node), `${textOf(node)}: a range goes from the lower to the higher weight, by a step above 0`);
    return undefined;
  }
  return { low, high, step, ...(node.sold && { sold: node.sold }) };
}

/** What an `athlete` says of body, maxes, goals and what to avoid. */
export function buildAthleteFacts(reading: EntryReading, lines: readonly ast.AthleteLine[]): Facts<AthleteEntry> {
  const facts: Facts<AthleteEntry> = { weighIns: [], maxes: [], goals: [], retests: [], avoid: [], away: [], screened: [] };
  for (const line of lines) {
    if (!line.$cstNode) continue;
    const span = spanOf(line);
    const missing = expectValue(reading, span);
    switch (line.$type) {
      case 'BornLine':
        if (line.year === undefined) missing('Expected a year such as 1991');
        else if (!/^(?:19|20)\d\d$/.test(line.year)) reading.report('out-of-range', span, `${line.year} is no year of birth: write it such as 1991`);
        else facts.born = Number(line.year);
        break;
      case 'SexLine':
        if (line.sex) facts.sex = line.sex;
        else missing('Expected female or male');
        break;
      case 'AthleteUnitsLine':
        if (line.unit) facts.units = UNIT_WORDS.get(line.unit.toLowerCase())!.unit as MassUnit;
        else missing('Expected kg or lb');
        break;
      case 'WeighInLine': {
        if (!line.mass || !line.date) missing('Expected a weight and a day such as 68.5 kg on 2026-10-01');
        const mass = buildMass(reading, readLineUnits(line), line.mass, 'bodyGrams');
        const date = buildDate(reading, line.date)?.date;
        if (mass && date) facts.weighIns = [...facts.weighIns, { mass, date, span }];
        break;
      }
      case 'MaxLine': {
        if (!line.name?.$cstNode || !line.load) missing('Expected a movement, its load and a day such as Back Squat: 105 kg on 2026-09-28');
        if (!line.name?.$cstNode) break;
        const load = line.load?.$cstNode ? buildLoad(reading, readLineUnits(line), line.load) : undefined;
        const date = buildDate(reading, line.date)?.date;
        facts.maxes = [...facts.maxes, { movement: buildName(line.name), ...(load && { load }), ...(date && { date }), span }];
        break;
      }
      case 'GoalLine': {
        if (!line.name?.$cstNode || !line.set) missing('Expected a movement and a set such as Pull-up: 8 @ bw by 2027-06-01');
        if (!line.name?.$cstNode) break;
        const set = line.set?.$cstNode ? buildSet(reading, readLineUnits(line), line.set) : undefined;
        const by = buildDate(reading, line.date)?.date;
        facts.goals = [...facts.goals, { movement: buildName(line.name), ...(set && { set }), ...(by && { by }), span }];
        break;
      }
      case 'RetestLine': {
        if (!line.name?.$cstNode || line.masses.length === 0) missing('Expected a movement and two loads such as Back Squat: 100, 102.5 kg on 2026-09-28');
        if (!line.name?.$cstNode) break;
        const date = buildDate(reading, line.date)?.date;
        const tests = masses(reading, readLineUnits(line), line.masses);
        facts.retests = [...facts.retests, { movement: buildName(line.name), masses: tests, ...(date && { date }), span }];
        break;
      }
      case 'AvoidLine': {
        if (!line.name?.$cstNode) {
          missing('Expected a pattern or a movement to avoid');
          break;
        }
        const until = buildDate(reading, line.date)?.date;
        const reason = line.reason?.$cstNode ? buildName(line.reason).text : undefined;
        facts.avoid = [...facts.avoid, { what: buildName(line.name), ...(until && { until }), ...(reason && { reason }), span }];
        break;
      }
      case 'AwayLine': {
        if (!line.start || !line.end) missing('Expected two days such as 2026-12-19 to 2027-01-03');
        const [from, to] = [buildDate(reading, line.start)?.date, buildDate(reading, line.end)?.date];
        const reason = line.reason?.$cstNode ? buildName(line.reason).text : undefined;
        facts.away = [...facts.away, { ...(from && { from }), ...(to && { to }), ...(reason && { reason }), span }];
        if (from && to && from > to) reading.report('range-order', span, `${from} to ${to}: the first day away comes first`);
        break;
      }
      case 'ScreenedLine': {
        if (!line.date) missing('Expected a date after screened, such as 2026-11-17');
        const date = buildDate(reading, line.date)?.date;
        const by = line.by?.$cstNode ? buildName(line.by).text : undefined;
        if (date) facts.screened = [...facts.screened, { date, ...(by && { by }), span }];
        break;
      }
    }
  }
  return facts;
}


