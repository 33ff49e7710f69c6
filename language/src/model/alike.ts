/** Whether two facts say the same; what is undefined and what is not there are the same. */
export function isAlike(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (typeof one !== 'object' || typeof other !== 'object' || one === null || other === null) return false;
  if (Array.isArray(one) || Array.isArray(other)) return isSameList(one, other);
  return haveSameParts(one as Parts, other as Parts);
}

type Parts = Readonly<Record<string, unknown>>;

function isSameList(one: unknown, other: unknown): boolean {
  if (!Array.isArray(one) || !Array.isArray(other) || one.length !== other.length) return false;
  return one.every((item, index) => isAlike(item, other[index]));
}

function haveSameParts(one: Parts, other: Parts): boolean {
  for (const key in one) if (!isAlike(one[key], other[key])) return false;
  for (const key in other) if (other[key] !== undefined && one[key] === undefined) return false;
  return true;
}
