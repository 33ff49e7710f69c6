/** The words that an exercise's lines may say, in the trade's words and lower case. */

export const PATTERNS = [
  'squat',
  'hinge',
  'lunge',
  'horizontal push',
  'horizontal pull',
  'vertical push',
  'vertical pull',
  'carry',
  'trunk',
  'jump',
  'isolation',
  'conditioning',
  'mobility',
] as const;

export const KINDS_OF_WORK = ['strength', 'carry', 'hold', 'jump', 'conditioning', 'mobility'] as const;

export const POSITIONS = [
  'standing',
  'kneeling',
  'half-kneeling',
  'quadruped',
  'supine',
  'prone',
  'side-lying',
  'hanging',
  'seated',
] as const;

export const TRUNK_DIRECTIONS = ['extension', 'flexion', 'rotation', 'side bend'] as const;
