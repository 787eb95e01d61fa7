import { at, type Faults } from '../../input/faults.js';
import { readSource } from '../../source.js';
import { type ActivityLaw, idealLaw } from './activity-law.js';

const keys = ['name', 'A25', 'b', 'c', 'sizes', 'otherwise', 'upTo', 'source'];

/** Reads a law as plain data from a caller's value, noting every fault. @internal */
export function readActivityLaw(value: unknown, path: string, faults: Faults): ActivityLaw {
  const before = faults.count;
  const unread = faults.object(
    value,
    path,
    'a law of activity { name, A25, b, c, sizes, upTo, source }',
    keys,
  );
  faults.text(unread.name, at(path, 'name'), 'a name');
  const number = (key: string, expected: string, from: number, to: number) =>
    unread[key] === undefined || faults.number(unread[key], at(path, key), expected, { from, to });
  number('A25', 'an A in (L/mol)^½', 0, 10);
  number('b', 'a coefficient in (L/mol)^½', 0, 100);
  number('c', 'a coefficient in L/mol', -10, 10);
  number('otherwise', 'a size in Å', 0.1, 100);
  number('upTo', 'an ionic strength in mol/L', 0, 1e9);
  const read = { ...unread, source: readSource(unread.source, at(path, 'source'), faults) };
  const law = unread.sizes === undefined ? read : { ...read, sizes: readSizes(unread, path, faults) };
  return faults.count > before ? idealLaw : (law as unknown as ActivityLaw);
}

function readSizes(
  unread: Readonly<Record<string, unknown>>,
  path: string,
  faults: Faults,
): Readonly<Record<string, number>> {
  for (const key of ['A25', 'b', 'c'])
    if (unread[key] !== undefined)
      faults.add('conflict', at(path, key), 'no such coefficient beside sizes', unread[key]);
  const here = at(path, 'sizes');
  const sizes = faults.object(unread.sizes, here, 'sizes in Å by formula');
  const limits = { from: 0.1, to: 100 };
  return Object.fromEntries(
    Object.entries(sizes).map(([formula, size]) => [
      formula,
      faults.number(size, at(here, formula), 'a size in Å', limits),
    ]),
  );
}
