import { expect, test } from 'vitest';
import { check, lines } from './workspace.ts';

const DEFINED = lines(
  'athlete Quill Harrow',
  'athlete Odalys Fenn',
  'place Kelp Cellar',
  'plan Brass Almanac',
  '  day 1',
  '    Push-up: 8',
);
const NO_PLAN = 'Not as planned';

/** What is told of a session's header. */
function tell(header: string): string[] {
  return check({ 'defined.plim': DEFINED, 'log.plim': lines(header, '  Push-up: 8') }).filter(
    (line) => line.startsWith('log.plim') && !line.includes(NO_PLAN),
  );
}

// Names of a session's header in another's place, or two in one: written apart, with nothing left out.
test.each<[header: string, told: string]>([
  [
    'session 2026-11-17, Quill Harrow',
    '1:21 No plan is called Quill Harrow, but an athlete is: no comma stands before the name [unknown-plan] → Write Quill Harrow: session 2026-11-17 Quill Harrow',
  ],
  [
    'session 2026-11-17 18:30, Quill Harrow',
    '1:27 No plan is called Quill Harrow, but an athlete is: no comma stands before the name [unknown-plan] → Write Quill Harrow: session 2026-11-17 18:30 Quill Harrow',
  ],
  [
    'session 2026-11-17 Quill Harrow, Odalys Fenn',
    '1:34 No plan is called Odalys Fenn: write Quill Harrow | Odalys Fenn [unknown-plan] → Write Quill Harrow | Odalys Fenn: session 2026-11-17 Quill Harrow | Odalys Fenn',
  ],
  [
    'session 2026-11-17 Quill Harrow, Kelp Cellar',
    '1:34 No plan is called Kelp Cellar: write Quill Harrow at Kelp Cellar [unknown-plan] → Write Quill Harrow at Kelp Cellar: session 2026-11-17 Quill Harrow at Kelp Cellar',
  ],
  [
    'session 2026-11-17 at Kelp Cellar, Quill Harrow',
    '1:36 No plan is called Quill Harrow: write Quill Harrow at Kelp Cellar [unknown-plan] → Write Quill Harrow at Kelp Cellar: session 2026-11-17 Quill Harrow at Kelp Cellar',
  ],
  [
    'session 2026-11-17 at Kelp Cellar Quill Harrow',
    '1:23 No place is called Kelp Cellar Quill Harrow: write Quill Harrow at Kelp Cellar [unknown-place] → Write Quill Harrow at Kelp Cellar: session 2026-11-17 Quill Harrow at Kelp Cellar',
  ],
  [
    'session 2026-11-17 Quill Harrow in Kelp Cellar',
    '1:20 No athlete is called Quill Harrow in Kelp Cellar: write Quill Harrow at Kelp Cellar [unknown-athlete] → Write Quill Harrow at Kelp Cellar: session 2026-11-17 Quill Harrow at Kelp Cellar',
  ],
  [
    'session 2026-11-17 Quill Harrow Kelp Cellar, Brass Almanac week 1 day 1',
    '1:20 No athlete is called Quill Harrow Kelp Cellar: write Quill Harrow at Kelp Cellar [unknown-athlete] → Write Quill Harrow at Kelp Cellar: session 2026-11-17 Quill Harrow at Kelp Cellar, Brass Almanac week 1 day 1',
  ],
  [
    'session 2026-11-17 Kelp Cellar',
    '1:20 No athlete is called Kelp Cellar: write at Kelp Cellar [unknown-athlete] → Write at Kelp Cellar: session 2026-11-17 at Kelp Cellar',
  ],
  [
    'session 2026-11-17 Quill Harrow with Odalys Fenn at Kelp Cellar',
    '1:20 No athlete is called Quill Harrow with Odalys Fenn: write Quill Harrow | Odalys Fenn [unknown-athlete] → Write Quill Harrow | Odalys Fenn: session 2026-11-17 Quill Harrow | Odalys Fenn at Kelp Cellar',
  ],
  [
    'session 2026-11-17 Quill Harrow Brass Almanac',
    '1:20 No athlete is called Quill Harrow Brass Almanac: write Quill Harrow, Brass Almanac [unknown-athlete] → Write Quill Harrow, Brass Almanac: session 2026-11-17 Quill Harrow, Brass Almanac',
  ],
])('%s', (header, told) => {
  expect(tell(header)).toEqual([`log.plim:${told}`]);
});

test('the comma before a plan and its week', () => {
  const [told] = tell('session 2026-11-17 Quill Harrow at Kelp Cellar Brass Almanac week 1 day 1');
  expect(told).toBe(
    'log.plim:1:36 No place is called Kelp Cellar Brass Almanac: write Quill Harrow at Kelp Cellar, Brass Almanac [unknown-place] → Write Quill Harrow at Kelp Cellar, Brass Almanac: session 2026-11-17 Quill Harrow at Kelp Cellar, Brass Almanac week 1 day 1',
  );
});

// No fix where a name would be lost, or has no place left.
test.each<[header: string, told: string]>([
  [
    'session 2026-11-17 Quill Harow in Kelp Cellar',
    '1:20 No athlete is called Quill Harow in Kelp Cellar: did you mean Quill Harrow? [unknown-athlete] → Define athlete Quill Harow in Kelp Cellar: athlete Quill Harow in Kelp Cellar ⏎ session 2026-11-17 Quill Harow in Kelp Cellar',
  ],
  [
    'session 2026-11-17 Quill Harrow at Kelp Cellar, Kelp Cellar',
    '1:49 No plan is called Kelp Cellar: define it with "plan Kelp Cellar", or correct the name [unknown-plan] → Define plan Kelp Cellar: plan Kelp Cellar ⏎ session 2026-11-17 Quill Harrow at Kelp Cellar, Kelp Cellar',
  ],
])('%s', (header, told) => {
  expect(tell(header)).toEqual([`log.plim:${told}`]);
});
