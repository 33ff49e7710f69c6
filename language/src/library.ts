import barbell from '../library/barbell.plim';
import bodyweight from '../library/bodyweight.plim';
import cable from '../library/cable.plim';
import carry from '../library/carry.plim';
import conditioning from '../library/conditioning.plim';
import dumbbell from '../library/dumbbell.plim';
import jump from '../library/jump.plim';
import kettlebell from '../library/kettlebell.plim';
import machine from '../library/machine.plim';
import mobility from '../library/mobility.plim';
import trunk from '../library/trunk.plim';

/** The movements that come with the language, in the notation itself: `[name, text]`. A workspace may replace any. */
export const LIBRARY_FILES: readonly (readonly [name: string, text: string])[] = Object.entries({
  barbell,
  bodyweight,
  cable,
  carry,
  conditioning,
  dumbbell,
  jump,
  kettlebell,
  machine,
  mobility,
  trunk,
});
