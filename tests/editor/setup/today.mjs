/** The day on which every test in an editor takes place, whatever day it is. */
export const today = '2026-11-24';
