/**
 * The question over each export of an entry file, `// What is in the beaker?`, by the name of the export.
 *
 * @param {string} text of the entry file
 * @returns {Map<string, string>}
 */
export function questionsOf(text) {
  const [, ...groups] = text.split(/^\/\/ (?=[A-Z])/m);
  const named = groups.flatMap((group) => {
    const question = group.slice(0, group.indexOf('?') + 1);
    const names = [...group.matchAll(/export (?:type )?\{([^}]*)\}|export \* as (\w+)/g)].flatMap(
      ([, list, namespace]) => namespace ?? (list ?? '').split(','),
    );
    return names.map((name) => /** @type {const} */ ([name.trim().split(/\s+/).at(-1) ?? '', question]));
  });
  return new Map(named.filter(([name]) => name !== ''));
}
