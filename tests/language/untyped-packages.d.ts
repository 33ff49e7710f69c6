/** Libraries that the tests compare against and that ship no types. */
declare module 'jstat';
declare module 'luxon';
declare module 'ml-regression-theil-sen';
