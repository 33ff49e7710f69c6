/** Equipment that movements need and places have, in the trade's words. */
import { foldName } from '../text/names.ts';

/** Which inventory of a place makes the load: `bars` and `plates`, `dumbbells`, `kettlebells`, `stacks`, or none. */
export type Implement = 'bar' | 'dumbbell' | 'kettlebell' | 'stack' | 'none';

export interface Equipment {
  readonly name: string;
  readonly also: readonly string[];
  readonly implement: Implement;
  /** Too common or too easily replaced to be worth a warning where a place does not list it. */
  readonly alwaysThere?: true;
  /** Counts metres or calories by itself: they mean something on such a machine alone. */
  readonly metered?: true;
}

type Row = readonly [name: string, ...also: string[]];

const withImplement = (implement: Implement, rows: readonly Row[]): Equipment[] =>
  rows.map(([name, ...also]) => ({ name, also, implement }));

export const EQUIPMENT: readonly Equipment[] = [
  ...withImplement('bar', [
    ['barbell', 'barbells', 'bar'],
    ['trap bar', 'hex bar'],
    ['curl bar', 'cambered curl bar'],
    ['safety bar', 'safety squat bar'],
  ]),
  ...withImplement('dumbbell', [['dumbbell', 'dumbbells']]),
  ...withImplement('kettlebell', [['kettlebell', 'kettlebells']]),
  // A machine loaded with plates can be written as a stack too: what matters is which kilograms it can be set to.
  ...withImplement('stack', [
    ['cable', 'cables', 'cable machine', 'cable stack', 'cable station'],
    ['lat pulldown machine', 'lat pulldown', 'pulldown machine'],
    ['leg press machine', 'leg press'],
    ['hack squat machine', 'hack squat'],
    ['belt squat machine', 'belt squat'],
    ['leg extension machine', 'leg extension'],
    ['leg curl machine', 'leg curl'],
    ['calf raise machine', 'calf machine'],
    ['hip adduction machine', 'adductor machine'],
    ['hip abduction machine', 'abductor machine'],
    ['hip thrust machine'],
    ['chest press machine', 'chest press'],
    ['incline press machine'],
    ['shoulder press machine', 'shoulder press'],
    ['row machine', 'seated row machine'],
    ['fly machine', 'pec deck'],
    ['lateral raise machine'],
    ['curl machine', 'biceps curl machine'],
    ['dip machine'],
    ['back extension machine'],
    ['ab crunch machine', 'crunch machine'],
  ]),
  ...withImplement('none', [
    // Only one end of the bar is loaded, so pairs of plates do not say what it can make.
    ['landmine', 'landmine attachment'],
    // The guided bar weighs something else on every machine.
    ['Smith machine'],
    ['weight plate', 'plate'],
    ['sandbag', 'sandbags'],
    ['medicine ball', 'medicine balls', 'med ball', 'slam ball'],
    ['sled', 'sleds'],
    ['yoke'],
    ['rack', 'squat rack', 'power rack', 'squat stand'],
    ['bench', 'benches', 'flat bench', 'adjustable bench'],
    ['preacher bench', 'preacher pad'],
    ['back extension bench', 'back extension'],
    ['reverse extension bench'],
    ['glute-ham bench', 'glute-ham developer'],
    ['box', 'boxes', 'jump box', 'plyo box'],
    ['step', 'steps', 'low step'],
    ['hurdle', 'hurdles'],
    ['pull-up bar', 'chin-up bar'],
    ['dip bars', 'dip bar', 'parallel bars', 'dip station'],
    ['rings', 'gymnastic rings'],
    ['suspension straps', 'suspension trainer', 'straps'],
    ['band', 'bands', 'resistance band', 'resistance bands', 'mini-band'],
    ['sliders', 'slider'],
    ['ab wheel'],
    ['exercise ball', 'stability ball'],
    ['foam roller', 'roller'],
    ['jump rope', 'skipping rope'],
    ['battle ropes', 'battle rope'],
  ]),
  ...withImplement('none', [
    ['rower', 'rowing machine', 'rowing ergometer'],
    ['ski ergometer', 'ski machine'],
    ['air bike', 'fan bike'],
    ['stationary bike', 'exercise bike', 'bike'],
    ['treadmill', 'treadmills'],
    ['elliptical trainer', 'elliptical', 'cross trainer'],
    ['stair climber', 'stair machine'],
  ]).map((machine): Equipment => ({ ...machine, metered: true })),
  { name: 'mat', also: ['mats', 'exercise mat'], implement: 'none', alwaysThere: true },
  { name: 'floor', also: ['floor space'], implement: 'none', alwaysThere: true },
  { name: 'wall', also: ['walls'], implement: 'none', alwaysThere: true },
];

const BY_SPELLING: ReadonlyMap<string, Equipment> = new Map(
  EQUIPMENT.flatMap((thing) =>
    [thing.name, ...thing.also].map((spelling) => [foldName(spelling), thing] as const),
  ),
);

/** `Pull-up bar` → the pull-up bar; an unknown name → undefined. */
export function findEquipment(name: string): Equipment | undefined {
  return BY_SPELLING.get(foldName(name));
}
