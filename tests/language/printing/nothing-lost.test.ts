import { expect, test } from 'vitest';
import { readOne } from './print-again.ts';

const TRAINING = 'plan Slow Tide\n  ';

// What the grammar takes and the model has no room for is said, never dropped in silence.
test.each([
  ['place Hall\n  bars 2x20 kg', '2x20 kg: one weight stands here, without a count'],
  [`${TRAINING}Marsh Pull: 5 @ bw+2x10 kg`, '2x10 kg: one weight stands here, without a count'],
  [
    `${TRAINING}Marsh Pull: 5 @ 75% + 10 kg chain`,
    'Not all of 75% + 10 kg chain can be read: a percentage stands alone',
  ],
  [
    `${TRAINING}Marsh Pull: 5 @ 50-60% of bw`,
    'Not all of 50-60% of bw can be read: a percentage stands alone',
  ],
  [`${TRAINING}Marsh Pull: 5 @ 60-70 cm`, 'Not all of 60-70 cm can be read: a setting is one number'],
  [
    `${TRAINING}Marsh Pull: 5 @ 2x18 kg left 20 kg right`,
    'Not all of 2x18 kg left 20 kg right can be read: each side has one weight',
  ],
  [`${TRAINING}Marsh Pull: 8 left 0:30 right`, '8 left 0:30 right: both sides are counted in the same unit'],
])('%s', (text, message) => {
  expect(readOne(text).problems.filter(({ severity }) => severity === 'error')).toMatchObject([{ message }]);
});
