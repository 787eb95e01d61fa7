import { pKwAt, works } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { gasConstant, zeroCelsius } from '../../src/equilibrium/temperature/kelvin.js';
import { read } from '../tree.js';
import {
  differenceOf,
  hasSecondSource,
  indicatorsElsewhere,
  isApart,
  otherValues,
  workOf,
  workUnder,
} from './second-source.js';
import { type CatalogueValue, catalogueValues, type Kind, kinds } from './values.js';

const byName = new Map(catalogueValues.map((value) => [value.name, value]));

function get(name: string): CatalogueValue {
  const value = byName.get(name);
  if (value === undefined) throw new Error(`no ${name}`);
  return value;
}

/** What stands behind a value that no second work has: `published`, `commonPractice` or `fromMemory`. */
const standingOf = (value: CatalogueValue): string =>
  hasSecondSource(value) ? 'compared' : value.source.kind;

describe('the catalogue beside what other works print', () => {
  test('each value is a number, and has a name of its own', () => {
    expect(byName.size).toBe(catalogueValues.length);
    for (const { name, at } of catalogueValues) expect(at(25), name).toBeTypeOf('number');
    expect(catalogueValues.filter(({ at }) => Number.isNaN(at(25)))).toEqual([]);
  });

  // How far careful works differ stands in second-source.ts; what lies further off is decided, and `apart` says how.
  test('agrees as well as careful works do, and where it does not, says which is kept and why', () => {
    const surprising = otherValues.filter(
      (other) => isApart(get(other.datum), other) !== (other.apart !== undefined),
    );
    expect(surprising).toEqual([]);
  });

  test('is never compared with the work that it is from', () => {
    for (const other of otherValues) {
      const { is } = workOf(other);
      for (const key of is) expect(works).toHaveProperty([key]);
      expect(is, other.datum).not.toContain(workUnder(get(other.datum)));
    }
  });

  // One route is calorimetry, by way of enthalpies of formation, the other the slope of pKw. The release gives pKw to 0.01 (from memory),
  // which over 25 °C is 0.74 kJ/mol; its slope makes 56.4.
  test('has the heat of neutralisation that pKw makes with temperature', () => {
    const slope = (pKwAt(25.5) - pKwAt(24.5)) / (1 / (zeroCelsius + 25.5) - 1 / (zeroCelsius + 24.5));
    const kJ = -(gasConstant * Math.LN10 * slope) / 1000;
    expect(Math.abs(get('heats.neutralisation').at(25) - kJ)).toBeLessThan(0.74);
  });

  // `npm run unit -- tests/catalogue/second-source -u` writes the list anew; look at the difference.
  test('has no second source for what single-source.txt lists', async () => {
    const lines = catalogueValues.flatMap((value) =>
      hasSecondSource(value) ? [] : [`${value.name}: ${value.source.kind}`],
    );
    await expect(`${lines.sort().join('\n')}\n`).toMatchFileSnapshot('single-source.txt');
  });
});

describe('the guide on sources', () => {
  const rows = read('docs/guides/sources.md').split('\n');
  const cellsOf = (kind: Kind): string[] => {
    const row = rows.find((line) => line.startsWith(`| ${kind} |`));
    return (row ?? '').split('|').map((cell) => cell.trim());
  };

  test.each(kinds)('counts each %s', (kind) => {
    const standings = catalogueValues.filter((value) => value.kind === kind).map(standingOf);
    const count = (standing: string): number => standings.filter((one) => one === standing).length;
    expect(cellsOf(kind).slice(2, 7).map(Number)).toEqual([
      standings.length,
      count('compared'),
      count('published'),
      count('commonPractice'),
      count('fromMemory'),
    ]);
  });

  test.each(kinds)('names the largest difference of a %s', (kind) => {
    const differences = [
      ...otherValues
        .filter(({ datum }) => get(datum).kind === kind)
        .map((other) => Math.abs(differenceOf(get(other.datum), other))),
      ...indicatorsElsewhere
        .filter(({ datum }) => get(datum).kind === kind)
        .map(({ difference }) => difference),
    ];
    const [printed = ''] = /^[\d.]*/.exec(cellsOf(kind)[7] ?? '') ?? [];
    const digits = printed.split('.')[1]?.length ?? 0;
    expect(printed).toBe(differences.length === 0 ? '' : Math.max(...differences).toFixed(digits));
  });
});
