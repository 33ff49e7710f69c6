/**
 * How much of the body a movement carries, as a share of body mass. Static shares suit volume load; peak forces
 * are higher. Push-ups were weighed on plates; the rest follows from segment masses.
 */

/** Shares of body mass; of a limb's segments one side. */
export interface SegmentMasses {
  readonly head: number;
  readonly trunk: number;
  readonly upperArm: number;
  readonly forearm: number;
  readonly hand: number;
  readonly thigh: number;
  readonly shank: number;
  readonly foot: number;
}

/**
 * Men and women: de Leva P (1996) J Biomech 29(9):1223-1230. Winter: Winter DA (2009) Biomechanics and Motor
 * Control of Human Movement, 4th ed., table 4.1 (after Dempster); the set that is used where sex is not stated.
 */
export const SEGMENT_MASSES = {
  men: {
    head: 0.0694,
    trunk: 0.4346,
    upperArm: 0.0271,
    forearm: 0.0162,
    hand: 0.0061,
    thigh: 0.1416,
    shank: 0.0433,
    foot: 0.0137,
  },
  women: {
    head: 0.0668,
    trunk: 0.4257,
    upperArm: 0.0255,
    forearm: 0.0138,
    hand: 0.0056,
    thigh: 0.1478,
    shank: 0.0481,
    foot: 0.0129,
  },
  winter: {
    head: 0.081,
    trunk: 0.497,
    upperArm: 0.028,
    forearm: 0.016,
    hand: 0.006,
    thigh: 0.1,
    shank: 0.0465,
    foot: 0.0145,
  },
} as const satisfies Readonly<Record<string, SegmentMasses>>;

/**
 * What moves in a squat on both legs, on one, and in a pull-up, chin-up or dip: all but the limbs that stay put.
 * That shanks and feet are left out: Cormie P, McBride JM, McCaulley GO (2007) J Strength Cond Res 21(4):1042-1049.
 */
export const SHARES_FROM_SEGMENTS = {
  squat: ({ shank, foot }) => 1 - 2 * (shank + foot),
  'single-leg squat': ({ shank, foot }) => 1 - (shank + foot),
  'pull-up': ({ forearm, hand }) => 1 - 2 * (forearm + hand),
  'one leg': ({ thigh, shank, foot }) => thigh + shank + foot,
  'head, arms and trunk': ({ head, trunk, upperArm, forearm, hand }) =>
    head + trunk + 2 * (upperArm + forearm + hand),
} as const satisfies Readonly<Record<string, (masses: SegmentMasses) => number>>;

/** Weighed holding still, arms straight (up) and bent (down). */
export interface WeighedShares {
  readonly up: number;
  readonly down: number;
}

/** Mier CM et al. (2014) Int J Exerc Sci 7(2):161-168. */
export const WEIGHED_PUSH_UPS = {
  'push-up': { men: { up: 0.67, down: 0.746 }, women: { up: 0.651, down: 0.703 } },
  'knee push-up': { men: { up: 0.525, down: 0.601 }, women: { up: 0.515, down: 0.566 } },
} as const satisfies Readonly<Record<string, Readonly<Record<'men' | 'women', WeighedShares>>>>;

/** Mean of up and down, by sex where it is stated, else of both sexes. */
export function computePushUpShare(movement: keyof typeof WEIGHED_PUSH_UPS, sex?: 'male' | 'female'): number {
  const { men, women } = WEIGHED_PUSH_UPS[movement];
  const mean = ({ up, down }: WeighedShares) => (up + down) / 2;
  if (sex === undefined) {
    return (mean(men) + mean(women)) / 2;
  }
  return mean(sex === 'male' ? men : women);
}

/** Share × body mass, plus what is added or less the help (a negative `added`); never below zero. Any one unit. */
export function computeMovedMass(share: number, bodyMass: number, added = 0): number {
  return Math.max(0, share * bodyMass + added);
}
