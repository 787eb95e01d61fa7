import {
  acids,
  type BufferChoice,
  capacityOf,
  chooseBuffer,
  davies,
  makeSolution,
  type Protolyte,
  pKaAt,
  reagents,
  strongAdditionTo,
} from 'protolysis';
import { expect, test } from 'vitest';
import { listed } from '../faults-of.js';

const candidates = (choice: BufferChoice) => chooseBuffer(choice).ranking;
const ids = (candidates: readonly { readonly protolyte: Protolyte }[]) =>
  candidates.map(({ protolyte }) => protolyte.id);
const among = [acids.acetic, acids.tris, acids.phosphoric, acids.ammonium, acids.carbonic];

test('the greatest capacity at the target comes first', () => {
  const ranked = candidates({ pH: 8, among });
  expect(ids(ranked).slice(0, 2)).toEqual(['tris', 'phosphoric']);
  const capacities = ranked.map(({ capacity }) => capacity as number);
  expect(capacities).toEqual([...capacities].sort((a, b) => b - a));
});

test('capacity at the target is C·K·h/(K + h)²·ln10, with water beside it', () => {
  const [only] = candidates({ pH: 5, molar: 0.2, among: [acids.acetic] });
  const [K, h] = [10 ** -4.756, 1e-5];
  const expected = Math.LN10 * ((0.2 * K * h) / (K + h) ** 2 + h + 10 ** -13.995 / h);
  expect((only?.capacity as number) / expected).toBeCloseTo(1, 12);
});

test('by temperature the steadiest comes first, by distance the nearest pKa', () => {
  expect(ids(candidates({ pH: 7.5, among, rankBy: 'temperature' })).slice(0, 2)).toEqual([
    'phosphoric',
    'tris',
  ]);
  expect(ids(candidates({ pH: 7.5, among, rankBy: 'distance' }))[0]).toBe('phosphoric');
});

test('what holds nothing at the target comes after what does, however steady it is', () => {
  const ranked = candidates({ pH: 7.5, among, rankBy: 'temperature' });
  expect(ranked.map(({ useful }) => useful)).toEqual([true, true, false, false, false]);
  expect(ids(ranked)[2]).toBe('acetic');
});

test('in the warm, pKa and distance are those of the warm', () => {
  const [tris] = candidates({ pH: 7.5, among: [acids.tris], conditions: { celsius: 37 } });
  const [pKa] = pKaAt(acids.tris, 37) as [number];
  expect(tris).toMatchObject({ pKa, distance: 7.5 - pKa });
});

test('the temperature coefficient is the slope of pKa there, whichever equation gives it', () => {
  for (const protolyte of [acids.tris, acids.acetic, acids.carbonic])
    for (const celsius of [5, 25, 60]) {
      const [one] = candidates({ pH: 7, among: [protolyte], conditions: { celsius } });
      const at = (t: number) => pKaAt(protolyte, t)[(one?.step as number) - 1] as number;
      // the error of a central difference falls with the square of its step, 1e-8 at 0.1 °C; its rounding is 1e-13
      expect(
        Math.abs((one?.perCelsius as number) - (at(celsius + 0.01) - at(celsius - 0.01)) / 0.02),
      ).toBeLessThan(1e-9);
    }
});

test('with activity the capacity is that of the real solution at the target', () => {
  const conditions = { activity: davies, celsius: 37 };
  const [one] = candidates({ pH: 7.2, molar: 0.05, among: [acids.phosphoric], conditions });
  const acid = makeSolution({ contents: [{ reagent: reagents.phosphoricAcid, molar: 0.05 }] });
  const there = strongAdditionTo(acid, 7.2, conditions);
  if (there.status !== 'found') return expect.unreachable(there.reason);
  expect((one?.capacity as number) / capacityOf(there.solution, conditions)).toBeCloseTo(1, 12);
});

test('a protolyte of several steps counts at the one that is nearest', () => {
  const [phosphoric] = candidates({ pH: 12, among: [acids.phosphoric] });
  expect(phosphoric).toMatchObject({ step: 3, pKa: 12.35, useful: true });
});

test('useful is within one unit', () => {
  const useful = candidates({ pH: 9.5, among }).filter((one) => one.useful);
  expect(ids(useful).sort()).toEqual(['ammonium', 'carbonic']);
});

/** dpKa/dT near 25 °C: Tris −0.028 (R. G. Bates, H. B. Hetzer, J. Phys. Chem. 65, 667 (1961): 8.214 at 20 °C, 7.934 at 30 °C). */
test('the temperature coefficient of Tris is -0.028 per °C, that of phosphate ten times smaller', () => {
  const [tris] = candidates({ pH: 8, among: [acids.tris] });
  expect(tris?.perCelsius).toBeCloseTo((7.934 - 8.214) / 10, 3);
  const [phosphate] = candidates({ pH: 7, among: [acids.phosphoric] });
  expect(Math.abs((tris?.perCelsius ?? 0) / (phosphate?.perCelsius ?? 1))).toBeGreaterThan(10);
});

/** MOPS from 7.18 at 25 °C to 7.044 at 37 °C: R. N. Roy et al. (1998), as its abstract prints; bicine 8.333 to 8.156 (2006). */
test.each([
  [acids.mops, 7.18, 7.044],
  [acids.bicine, 8.333, 8.156],
])(
  'from 25 to 37 °C the coefficient of 25 °C gives the change that was measured, to 0.015',
  (protolyte, at25, at37) => {
    const [one] = candidates({ pH: at25, among: [protolyte] });
    // 0.005 from the coefficient's own change over 12 °C, 0.005 from the digits printed, the rest between two evaluations
    expect(Math.abs(12 * (one?.perCelsius ?? 0) - (at37 - at25))).toBeLessThan(0.015);
  },
);

test('what is not known is null, and what nothing reaches has no capacity', () => {
  const [ada] = candidates({ pH: 1.6, among: [acids.ada] });
  expect(ada).toMatchObject({ step: 1, perCelsius: null });
  expect(candidates({ pH: 16, among: [acids.acetic] })[0]?.capacity).toBeNull();
});

test('an id that cannot even be looked at is refused like any other', () => {
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  const spoiled = { ...acids.acetic, id: proxy } as unknown as Protolyte;
  expect(() => candidates({ pH: 5, among: [spoiled] })).toThrow(/among\[0\]\.id/);
});

test('what is too hazardous for a teaching lab is left out unless its id is given, and then carries its hazard', () => {
  const catalogue = Object.values(acids);
  expect(ids(candidates({ pH: 9.2, among: catalogue }))).not.toContain('hydrocyanic');
  expect(ids(candidates({ pH: 7.4, among: catalogue }))).not.toContain('hypochlorous');
  const named = candidates({ pH: 9.2, among: catalogue, include: ['hydrocyanic'] });
  const cyanide = named.find(({ protolyte }) => protolyte.id === 'hydrocyanic');
  expect(cyanide?.hazard).toBe(acids.hydrocyanic.hazard);
  expect(ids(named)).not.toContain('arsenic');
  expect(chooseBuffer({ pH: 9.2, among: [acids.hydrocyanic] })).toEqual({
    ranking: [],
    leftOut: [
      {
        id: 'hydrocyanic',
        name: 'hydrogen cyanide',
        reason: 'it gives off hydrogen cyanide at every pH where it buffers',
      },
    ],
  });
});

test('an id to include that is not among the protolytes is refused', () => {
  expect(() => candidates({ pH: 9, among: [acids.boric], include: ['hydrocyanic'] })).toThrow('include[0]');
});

test('a protolyte of your own is left out for its own reason, which needs a source', () => {
  const source = { kind: 'commonPractice', note: 'none' } as const;
  const own = { ...acids.acetic, id: 'own', notForBuffers: { reason: 'it smells', source } };
  expect(chooseBuffer({ pH: 5, among: [own, acids.citric] }).leftOut).toMatchObject([
    { id: 'own', reason: 'it smells' },
  ]);
  const bad = { ...own, notForBuffers: { reason: 'it smells' } } as unknown as Protolyte;
  expect(() => candidates({ pH: 5, among: [bad] })).toThrow('notForBuffers.source');
});

test('of the whole catalogue these are left out, at any pH', () => {
  for (const pH of [2, 7.4, 9.2, 13]) {
    const { ranking, leftOut } = chooseBuffer({ pH, among: Object.values(acids) });
    expect(leftOut.map(({ id }) => id).sort()).toEqual([
      'arsenic',
      'chromic',
      'hydrazinium',
      'hydrocyanic',
      'hydrofluoric',
      'hydrogenSulfide',
      'hydroxylammonium',
      'hypochlorous',
      'nitrous',
      'phenol',
      'sulfurous',
    ]);
    expect(ranking.some(({ protolyte }) => protolyte.notForBuffers !== undefined)).toBe(false);
  }
});

/** Exact in doubles, so that pH 5 is one unit from both. */
const inTheMiddle = {
  id: 'invented',
  name: 'invented acid',
  species: [0, -1, -2].map((charge) => ({ formula: `H${2 + charge}X`, charge })),
  steps: [4, 6].map((pKa) => ({ pKa, source: { kind: 'fromMemory', note: 'invented' } })),
} as const as unknown as Protolyte;

test('half-way between two steps the first counts, and one unit away is still useful', () => {
  const [one] = candidates({ pH: 5, among: [inTheMiddle] });
  expect(one).toMatchObject({ step: 1, pKa: 4, distance: 1, useful: true });
  expect(candidates({ pH: 7.01, among: [inTheMiddle] })[0]?.useful).toBe(false);
});

test('what has no caution has no key for one', () =>
  expect(Object.keys(candidates({ pH: 5, among: [inTheMiddle] })[0] ?? {})).not.toContain('hazard'));

test('names every fault at once, and no id to include while the protolytes cannot be read', () => {
  const spoiled = { ...acids.acetic, steps: 'none' } as unknown as Protolyte;
  const faults = listed(() => candidates({ pH: 5, among: [spoiled], include: ['tris'] }));
  expect(faults.filter((fault) => fault.includes('include'))).toEqual([]);
  expect(listed(() => candidates({ pH: 99, among: [acids.acetic], include: ['tris'] }))).toEqual([
    'out-of-range pH',
    'unknown-substance include[0]',
  ]);
});
