import type { ExerciseWork } from './exercise-work.ts';
import type { MethodId } from './methods.ts';
import { type Result, toResult, type Unit } from './result.ts';
import type { BodyMass } from './weigh-ins.ts';
import { volumeOf, type Work } from './work.ts';

export interface WorkParts {
  readonly bodyMass?: (BodyMass & { readonly age: number }) | undefined;
  /** The exercises that the work is made of: what went into each sum. */
  readonly exercises?: readonly Pick<ExerciseWork, 'name' | 'work'>[];
}

/** Sums that are shown where there is anything in them. */
const SUMS: readonly {
  readonly method: MethodId;
  readonly unit: Unit;
  readonly sumOf: (work: Work) => number;
}[] = [
  { method: 'reps', unit: 'reps', sumOf: ({ reps }) => reps },
  { method: 'volume-load', unit: 'kg', sumOf: volumeOf },
  { method: 'load-distance', unit: 'kg·m', sumOf: ({ carried }) => carried / 1000 },
  { method: 'seconds', unit: 's', sumOf: ({ seconds }) => seconds },
  { method: 'contacts', unit: 'contacts', sumOf: ({ contacts }) => contacts },
  { method: 'carried-metres', unit: 'm', sumOf: ({ carriedMetres }) => carriedMetres },
  { method: 'machine-metres', unit: 'm', sumOf: ({ machineMetres }) => machineMetres },
  { method: 'metres', unit: 'm', sumOf: ({ metres }) => metres },
  { method: 'calories', unit: 'cal', sumOf: ({ calories }) => calories },
];

/** The sums of some work, each as a number that can explain itself; sums of nothing are left out. */
export function toWorkResults(work: Work, { bodyMass, exercises = [] }: WorkParts = {}): Result[] {
  const inputsOf = (unit: Unit, sumOf: (part: Work) => number): Result['inputs'] =>
    exercises.flatMap(({ name, work: part }) =>
      sumOf(part) > 0 ? [{ label: name, value: sumOf(part), unit }] : [],
    );
  const setsOf = ({ sets }: Work): number => sets;
  const hardOf = ({ hardSets }: Work): number => hardSets;
  const results: Result[] = [
    toResult({ value: work.sets, unit: 'sets', method: 'sets', inputs: inputsOf('sets', setsOf) }),
  ];
  if (work.hardSets > 0) {
    const omitted = exercises.flatMap(({ name, work: { sets, hardSets } }) =>
      hardSets < sets ? [{ what: name, why: `${sets - hardSets} of ${sets} sets not known to be hard` }] : [],
    );
    const inputs = inputsOf('sets', hardOf);
    results.push(toResult({ value: work.hardSets, unit: 'sets', method: 'hard-sets', inputs, omitted }));
  }
  const bound = work.atLeast ? 'at least' : 'exact';
  for (const { method, unit, sumOf } of SUMS) {
    const value = sumOf(work);
    if (value === 0) continue;
    results.push(
      method === 'volume-load'
        ? toVolumeResult(work, bodyMass)
        : toResult({ value, unit, method, bound, inputs: inputsOf(unit, sumOf), omitted: work.omitted }),
    );
  }
  return results;
}

/** Kilograms lifted, with the share of body mass named apart. */
export function toVolumeResult(work: Work, bodyMass?: WorkParts['bodyMass']): Result {
  const body = work.body / 1000;
  return toResult({
    value: volumeOf(work),
    unit: 'kg',
    method: 'volume-load',
    bound: work.atLeast ? 'at least' : 'exact',
    inputs: [
      { label: 'external load', value: work.external / 1000, unit: 'kg' },
      ...(body > 0
        ? [{ label: 'share of body mass', value: body, unit: 'kg' as const, by: 'body-share' as const }]
        : []),
      ...(body > 0 && bodyMass
        ? [
            { label: 'body mass', value: bodyMass.grams / 1000, unit: 'kg' as const },
            { label: 'weighed before', value: bodyMass.age, unit: 'days' as const },
          ]
        : []),
    ],
    omitted: work.omitted,
  });
}
