/** Steps that take longer than a slice each, and say in a list that they were taken. */
export function* takeLong(uri: string, done: string[]): Iterable<undefined> {
  for (const part of [1, 2, 3]) {
    const end = performance.now() + 3;
    while (performance.now() < end);
    done.push(`${uri} ${part}`);
    yield;
  }
}
