/**
 * Fitness and fatigue as two fading sums of past load: Banister EW et al. (1975) Aust J Sports Med 7:57-61;
 * Morton RH, Fitz-Clarke JR, Banister EW (1990) J Appl Physiol 69:1171-1177. The constants are customary and
 * fitted to nobody, so the curve is a shape without units.
 */

export interface FitnessFatigueConstants {
  readonly baseline: number;
  readonly fitnessGain: number;
  readonly fatigueGain: number;
  /** Days in which fitness falls to 1/e. */
  readonly fitnessDays: number;
  readonly fatigueDays: number;
}

export const CUSTOMARY_CONSTANTS: FitnessFatigueConstants = {
  baseline: 0,
  fitnessGain: 1,
  fatigueGain: 2,
  fitnessDays: 42,
  fatigueDays: 7,
};

export interface FitnessFatigueDay {
  /** Both with the day's own load in them. */
  readonly fitness: number;
  readonly fatigue: number;
  /** Before the day's training: the sum over earlier days only. This is the curve to show. */
  readonly before: number;
  /** With the day's own load. */
  readonly after: number;
}

/** One entry per daily load, oldest first, rest days 0. */
export function computeFitnessFatigue(
  dailyLoads: readonly number[],
  constants: FitnessFatigueConstants = CUSTOMARY_CONSTANTS,
): FitnessFatigueDay[] {
  const { baseline, fitnessGain, fatigueGain, fitnessDays, fatigueDays } = constants;
  const shape = (fitness: number, fatigue: number) =>
    baseline + fitnessGain * fitness - fatigueGain * fatigue;
  let fitness = 0;
  let fatigue = 0;
  return dailyLoads.map((load) => {
    const fadedFitness = fitness * Math.exp(-1 / fitnessDays);
    const fadedFatigue = fatigue * Math.exp(-1 / fatigueDays);
    fitness = fadedFitness + load;
    fatigue = fadedFatigue + load;
    return { fitness, fatigue, before: shape(fadedFitness, fadedFatigue), after: shape(fitness, fatigue) };
  });
}

/**
 * Days after one load until it does more good than harm, and until it does most good. Fitz-Clarke JR,
 * Morton RH, Banister EW (1991) J Appl Physiol 71:1151-1158. For the customary constants 5.8 and 20.9 days.
 */
export function findTurningDays(constants: FitnessFatigueConstants = CUSTOMARY_CONSTANTS): {
  readonly zero: number;
  readonly peak: number;
} {
  const { fitnessGain, fatigueGain, fitnessDays, fatigueDays } = constants;
  const scale = (fitnessDays * fatigueDays) / (fitnessDays - fatigueDays);
  const gains = fatigueGain / fitnessGain;
  return {
    zero: scale * Math.log(gains),
    peak: scale * Math.log((gains * fitnessDays) / fatigueDays),
  };
}
