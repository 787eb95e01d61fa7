/** Which of the values is the farthest from zero; of several the first. @internal */
export function farthestFromZero(values: readonly number[]): number {
  const sizes = values.map(Math.abs);
  return sizes.indexOf(Math.max(...sizes));
}
