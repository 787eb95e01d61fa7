/**
 * The name that a mistyped one was probably meant to be; undefined where none is near.
 *
 * Near means that at least half of the pairs of neighbouring letters are common to both (L. R. Dice, Ecology 26,
 * 297–302 (1945)), and that both begin with the same one. Capitals, blanks and hyphens do not count.
 *
 * @internal
 */
export function nearestName(typed: string, names: readonly string[]): string | undefined {
  const wanted = pairsIn(typed);
  let [nearest, best]: [string | undefined, number] = [undefined, 0.5];
  const first = lettersOf(typed).charAt(0);
  for (const name of names.filter((each) => lettersOf(each).startsWith(first))) {
    const pairs = pairsIn(name);
    const common = pairs.filter((pair) => wanted.includes(pair)).length;
    const share = (2 * common) / (wanted.length + pairs.length);
    if (share >= best && (nearest === undefined || share > best)) [nearest, best] = [name, share];
  }
  return nearest;
}

/** A name without capitals, blanks and hyphens, of at most sixty letters. @internal */
export const lettersOf = (name: string): string =>
  name
    .slice(0, 60)
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');

const pairsIn = (name: string): string[] => {
  const letters = lettersOf(name);
  return Array.from(letters, (letter, k) => letter + (letters[k + 1] ?? ''));
};
