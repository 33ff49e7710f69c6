/** Properties without a seed of their own are tried on the same inputs on every run and machine too. */
import fc from 'fast-check';
import { RUNS } from './language/support/generators/runs.ts';

fc.configureGlobal({ seed: RUNS.seed });
