import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The folder of package.json, with a slash at the end. */
export const root = fileURLToPath(new URL('..', import.meta.url));

/** The text of a file, by its path from the root. */
export const read = (path: string): string => readFileSync(root + path, 'utf8');

const ignored = read('.gitignore')
  .split('\n')
  .filter((line) => line.endsWith('/'))
  .map((line) => line.slice(0, -1));

/** What stands in a folder, by its path from the root; what .gitignore lists and git's own folder left out. */
export function entriesIn(folder: string): { path: string; isFolder: boolean }[] {
  return readdirSync(root + folder, { withFileTypes: true })
    .map((entry) => ({ path: folder + entry.name, isFolder: entry.isDirectory() }))
    .filter(({ path }) => path !== '.git' && !path.endsWith('.tgz') && !ignored.includes(path));
}

/** Every file in a folder, at any depth. */
export function filesIn(folder: string): string[] {
  return entriesIn(folder).flatMap(({ path, isFolder }) => (isFolder ? filesIn(`${path}/`) : [path]));
}
