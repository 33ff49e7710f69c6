/** Unit words as they may be typed. `unit` is what is meant; a `slip` is understood, and the fix writes it as meant. */
export interface UnitWord {
  readonly token: 'MASS_UNIT' | 'TIME_UNIT' | 'DISTANCE_UNIT' | 'CALORIE_UNIT';
  readonly unit: string;
  readonly slip: boolean;
}

const word = (token: UnitWord['token'], unit: string, ...slips: string[]): [string, UnitWord][] => [
  [unit, { token, unit, slip: false }],
  ...slips.map((slip): [string, UnitWord] => [slip, { token, unit, slip: true }]),
];

export const UNIT_WORDS: ReadonlyMap<string, UnitWord> = new Map([
  ...word('MASS_UNIT', 'kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'),
  ...word('MASS_UNIT', 'lb', 'lbs', 'pound', 'pounds'),
  ...word('TIME_UNIT', 's', 'sec', 'secs', 'second', 'seconds'),
  ...word('TIME_UNIT', 'min', 'mins', 'minute', 'minutes'),
  ...word('TIME_UNIT', 'h', 'hrs', 'hour', 'hours'),
  ...word('DISTANCE_UNIT', 'm', 'metre', 'metres', 'meter', 'meters'),
  ...word('DISTANCE_UNIT', 'km', 'kms'),
  ...word('DISTANCE_UNIT', 'yd', 'yds', 'yard', 'yards'),
  ...word('DISTANCE_UNIT', 'mi', 'mile', 'miles'),
  ...word('CALORIE_UNIT', 'cal', 'cals', 'kcal', 'calories'),
]);
