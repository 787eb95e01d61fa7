/** Why there is no recipe, on a line. @internal */
export const viewImpossible = ({
  because,
  reason,
}: {
  readonly because: string;
  readonly reason: string;
}): string => `no recipe (${because}): ${reason}`;
