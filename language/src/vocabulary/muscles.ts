/**
 * The muscle names of the library, in the trade's words, grounded in Uberon (Uber-anatomy Ontology, CC BY 3.0).
 *
 * The ids were read in Uberon's own bridge to the Foundational Model of Anatomy (obophenotype/uberon,
 * bridge/uberon-bridge-to-fma.obo), where each stands beside its name. Others: external and internal oblique, iliopsoas,
 * rotator cuff, adductor muscle of hip, gracilis and brachioradialis in published lists of Uberon terms. Latin names
 * follow Terminologia Anatomica (from memory). Where the trade's name is a part of one muscle, the id is the whole
 * muscle's.
 */
import { foldName } from '../text/names.ts';

export interface Muscle {
  readonly name: string;
  /** One id, or several where the trade's name is a group. */
  readonly uberon: readonly string[];
  readonly latin: string;
  readonly also: readonly string[];
  /** Set where an id is from memory and still to be checked. */
  readonly memory?: true;
}

export const MUSCLES: readonly Muscle[] = [
  {
    name: 'quadriceps',
    uberon: ['UBERON:0001377'],
    latin: 'musculus quadriceps femoris',
    also: ['quads', 'quad', 'knee extensors'],
  },
  {
    name: 'glutes',
    uberon: ['UBERON:0001370'],
    latin: 'musculus gluteus maximus',
    also: ['glute', 'gluteus maximus', 'gluteals'],
  },
  {
    name: 'hip abductors',
    uberon: ['UBERON:0001371', 'UBERON:0001376'],
    latin: 'musculus gluteus medius, musculus tensor fasciae latae',
    also: ['abductors', 'side glutes', 'gluteus medius'],
  },
  {
    name: 'hamstrings',
    uberon: ['UBERON:0002463'],
    latin: 'musculus biceps femoris, musculus semitendinosus, musculus semimembranosus',
    also: ['hamstring', 'hams', 'knee flexors'],
  },
  {
    name: 'adductors',
    uberon: ['UBERON:0011144', 'UBERON:0000950', 'UBERON:0001382'],
    latin: 'musculi adductores, musculus gracilis, musculus pectineus',
    also: ['adductor', 'hip adductors', 'inner thighs', 'groin'],
  },
  {
    name: 'hip flexors',
    uberon: ['UBERON:0001999', 'UBERON:0001378'],
    latin: 'musculus iliopsoas, musculus rectus femoris',
    also: ['hip flexor', 'iliopsoas', 'psoas'],
  },
  {
    name: 'calves',
    uberon: ['UBERON:0001388', 'UBERON:0001389'],
    latin: 'musculus gastrocnemius, musculus soleus',
    also: ['calf', 'gastrocnemius', 'soleus'],
  },
  {
    name: 'shins',
    uberon: ['UBERON:0001385'],
    latin: 'musculus tibialis anterior',
    also: ['shin', 'tibialis anterior', 'tibialis'],
  },
  {
    name: 'lats',
    uberon: ['UBERON:0001112', 'UBERON:0001478'],
    latin: 'musculus latissimus dorsi, musculus teres major',
    also: ['lat', 'latissimus dorsi'],
  },
  {
    // The rhomboids belong to the group too; no id of theirs was found to check, so none is given.
    name: 'upper back',
    uberon: ['UBERON:0002380'],
    latin: 'musculus trapezius, musculi rhomboidei',
    also: ['mid back', 'middle back', 'rhomboids', 'middle traps', 'lower traps'],
  },
  {
    name: 'upper traps',
    uberon: ['UBERON:0002380'],
    latin: 'pars descendens musculi trapezii',
    also: ['upper trap', 'traps', 'trapezius'],
  },
  {
    name: 'lower back',
    uberon: ['UBERON:0002462'],
    latin: 'musculus erector spinae',
    also: ['spinal erectors', 'erectors', 'erector spinae', 'low back'],
  },
  {
    name: 'chest',
    uberon: ['UBERON:0002381'],
    latin: 'musculus pectoralis major',
    also: ['pecs', 'pectorals', 'pectoralis major'],
  },
  {
    name: 'serratus',
    uberon: ['UBERON:0001125'],
    latin: 'musculus serratus anterior',
    also: ['serratus anterior'],
  },
  {
    name: 'front deltoids',
    uberon: ['UBERON:0001476'],
    latin: 'pars clavicularis musculi deltoidei',
    also: ['front delts', 'front shoulders', 'anterior deltoids'],
  },
  {
    name: 'side deltoids',
    uberon: ['UBERON:0001476'],
    latin: 'pars acromialis musculi deltoidei',
    also: ['side delts', 'side shoulders', 'lateral deltoids', 'middle deltoids'],
  },
  {
    name: 'rear deltoids',
    uberon: ['UBERON:0001476'],
    latin: 'pars spinalis musculi deltoidei',
    also: ['rear delts', 'rear shoulders', 'posterior deltoids'],
  },
  {
    name: 'rotator cuff',
    uberon: ['UBERON:0003683'],
    latin: 'musculi supraspinatus, infraspinatus, teres minor, subscapularis',
    also: ['cuff', 'external rotators'],
  },
  {
    name: 'biceps',
    uberon: ['UBERON:0001507', 'UBERON:0001506'],
    latin: 'musculus biceps brachii, musculus brachialis',
    also: ['bicep', 'elbow flexors'],
  },
  {
    name: 'triceps',
    uberon: ['UBERON:0001509'],
    latin: 'musculus triceps brachii',
    also: ['tricep', 'elbow extensors'],
  },
  {
    name: 'forearms',
    uberon: [
      'UBERON:0011011',
      'UBERON:0001521',
      'UBERON:0001522',
      'UBERON:0001523',
      'UBERON:0001524',
      'UBERON:0001526',
    ],
    latin: 'musculus brachioradialis, musculi flexores et extensores antebrachii',
    also: ['forearm', 'grip'],
  },
  {
    name: 'abdominals',
    uberon: ['UBERON:0002382'],
    latin: 'musculus rectus abdominis',
    also: ['abs', 'rectus abdominis'],
  },
  {
    name: 'obliques',
    uberon: ['UBERON:0005442', 'UBERON:0005454'],
    latin: 'musculus obliquus externus abdominis, musculus obliquus internus abdominis',
    also: ['oblique', 'side abs'],
  },
  {
    name: 'neck',
    uberon: ['UBERON:0002377'],
    latin: 'musculi colli',
    also: ['neck flexors'],
  },
];

const BY_SPELLING: ReadonlyMap<string, Muscle> = new Map(
  MUSCLES.flatMap((muscle) =>
    [muscle.name, ...muscle.also].map((spelling) => [foldName(spelling), muscle] as const),
  ),
);

/** `Quads` → the quadriceps; an unknown name → undefined. */
export function findMuscle(name: string): Muscle | undefined {
  return BY_SPELLING.get(foldName(name));
}
