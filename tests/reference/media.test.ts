import { davies, defineProtolyte, defineReagent, makeSolution, type Source, titrate } from 'protolysis';
import { describe, expect, test } from 'vitest';
import { strongIon } from '../make.js';
import { casesOf, type FamilyInput, type TitrationInput } from './vectors.js';

interface MediaCase {
  readonly id: string;
  readonly title: string;
  readonly input: Omit<TitrationInput, 'families'> & {
    readonly families: readonly (TitrationInput['families'][number] & {
      readonly media: readonly string[];
    })[];
  };
  readonly points: readonly { readonly V: string; readonly pH: string; readonly I: string }[];
}

const source: Source = { kind: 'fromMemory', note: 'an input of vectors/media.py' };

const reagentOf = ({ name, z0, pKa, media }: FamilyInput & { readonly media: readonly string[] }) => {
  const protolyte = defineProtolyte({
    id: name,
    name,
    species: [...pKa, ''].map((_, lost) => ({ formula: `${name}(${z0 - lost})`, charge: z0 - lost })),
    steps: pKa.map((value, k) => ({ pKa: Number(value), ionicStrength: Number(media[k]), source })),
  });
  return defineReagent({ id: name, name, protolytes: [{ protolyte, count: 1 }], ions: [] });
};

/** Seven titrations under the Davies equation, some constants from a salt medium: vectors/media.py, by a solver of its own. */
describe.each(casesOf<MediaCase>('media.json'))('$id $title', ({ input, points }) => {
  const side = (mL: number, key: 'C_sample' | 'C_titrant') =>
    makeSolution({
      mL,
      contents: [
        ...input.families.map((family) => ({
          reagent: reagentOf(family),
          molar: Number(family[key]),
        })),
        ...input.strong_ions.map((ion) => ({ reagent: strongIon(ion.name, ion.z), molar: Number(ion[key]) })),
      ],
    });
  const titration = titrate({
    analyte: side(Number(input.V0), 'C_sample'),
    titrant: side(1000, 'C_titrant'),
    conditions: { pKw: Number(input.pKw), activity: davies },
  });

  test.each(points)('pH and ionic strength at $V mL, to 1e-9', ({ V, pH, I }) => {
    const { pH: own, ionicStrength } = titration.equilibriumAt(Number(V));
    expect(Math.abs(own - Number(pH))).toBeLessThan(1e-9);
    expect(Math.abs(titration.pHAt(Number(V)) - Number(pH))).toBeLessThan(1e-9);
    expect(Math.abs(ionicStrength / Number(I) - 1)).toBeLessThan(1e-9);
  });
});
