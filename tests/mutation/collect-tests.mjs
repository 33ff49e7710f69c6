// What a test file means by `vitest` in a mutation run: its real `expect`, and `describe` and `test` that only note down
// what there is to run. The measures' tests use nothing else.
import { format } from 'node:util';

export { expect } from 'vitest';

/** @type {{ name: string, run: () => unknown }[]} */
let collected = [];
let path = [];

export function describe(name, body) {
  path.push(name);
  body();
  path.pop();
}

export function test(name, body) {
  collected.push({ name: [...path, name].join(' > '), run: body });
}

test.each = (rows) => (name, body) => {
  for (const row of rows) {
    const values = Array.isArray(row) ? row : [row];
    test(format(name, ...values), () => body(...values));
  }
};

/** Everything noted down since the last call; equal names are told apart by their place. */
export function takeTests(file) {
  const tests = collected.map(({ name, run }, index) => ({
    id: `${file}#${index}`,
    name: `${file}: ${name}`,
    run,
  }));
  collected = [];
  path = [];
  return tests;
}
