// The titrations that are timed, each twice: as the library takes it, and its charge balance as one would write it by hand.
import { acids, defineReagent, makeSolution, reagents, titrate } from 'protolysis';

const Kw = 1e-14;
const K = (/** @type {{ steps: readonly { pKa: number }[] }} */ { steps }) =>
  steps.map(({ pKa }) => 10 ** -pKa);

/** @typedef {{
 *   name: string,
 *   families: number,
 *   upTo: number,
 *   titration: import('protolysis').Titration,
 *   charge: (h: number, mL: number) => number,
 *   plain: { V0: number, Kw: number, strong: readonly [number, number], acids: readonly { top: number, mmol: number, K: readonly number[] }[] },
 * }} System */

/**
 * @param {string} name
 * @param {number} upTo mL of titrant at the end
 * @param {import('protolysis').Protolyte[]} protolytes 1 mmol of each in 50 mL
 * @param {number} sodium mmol of Na+ beside them
 * @param {import('protolysis').Reagent} titrant 0.1 mol/L
 * @param {(h: number, mL: number) => number} [byHand]
 * @returns {System}
 */
function systemOf(name, upTo, protolytes, sodium, titrant, byHand) {
  const contents = protolytes.map((protolyte) => ({
    reagent: defineReagent({
      id: protolyte.id,
      name: protolyte.id,
      protolytes: [{ protolyte, count: 1 }],
      ions: [],
    }),
    mmol: 1,
  }));
  const analyte = makeSolution({
    mL: 50,
    contents: [...contents, { reagent: reagents.sodiumHydroxide, mmol: sodium }],
  });
  const charge = titrant.ions[0]?.ion.charge ?? 0;
  const own = protolytes.map((protolyte) => ({
    top: protolyte.species[0]?.charge ?? 0,
    mmol: 1,
    K: K(protolyte),
  }));
  return {
    name,
    families: protolytes.length,
    upTo,
    titration: titrate({
      analyte,
      titrant: makeSolution({ contents: [{ reagent: titrant, molar: 0.1 }] }),
      conditions: { pKw: 14 },
    }),
    charge: byHand ?? mixture(own, sodium, charge * 0.1),
    plain: { V0: 50, Kw, strong: [sodium, charge * 0.1], acids: own },
  };
}

/**
 * Any mixture by hand: each acid's mean number of protons lost as a ratio of two polynomials in 1/h, by Horner's rule.
 *
 * @param {readonly { top: number, mmol: number, K: readonly number[] }[]} families
 * @param {number} sodium
 * @param {number} perMl
 */
function mixture(families, sodium, perMl) {
  return (/** @type {number} */ h, /** @type {number} */ mL) => {
    const V = 50 + mL;
    const x = 1 / h;
    let charge = sodium + perMl * mL;
    for (let i = 0; i < families.length; i += 1) {
      const { top, mmol, K } = /** @type {(typeof families)[number]} */ (families[i]);
      let sum = 1;
      let weighted = 0;
      for (let j = K.length - 1; j >= 0; j -= 1) {
        const term = /** @type {number} */ (K[j]) * x;
        weighted = term * (sum + weighted);
        sum = 1 + term * sum;
      }
      charge += mmol * (top - weighted / sum);
    }
    return h - Kw * x + charge / V;
  };
}

const [C1 = 0, C2 = 0] = K(acids.carbonic);
const [P1 = 0, P2 = 0, P3 = 0] = K(acids.phosphoric);

/** Six protons: citric acid's three constants and three more, made up for the timing. */
const six = {
  ...acids.citric,
  id: 'six',
  species: Array.from({ length: 7 }, (_, j) => ({ formula: `six ${j}`, charge: -j })),
  steps: [2, 3, 4.5, 6, 8, 10].map((pKa) => ({
    pKa,
    source: /** @type {const} */ ({ kind: 'commonPractice', note: 'made up' }),
  })),
};
const five = [acids.carbonic, acids.phosphoric, acids.acetic, acids.ammonium, acids.citric];

export const systems = [
  systemOf('carbonate with HCl', 50, [acids.carbonic], 2, reagents.hydrochloricAcid, (h, mL) => {
    const V = 50 + mL;
    return h - Kw / h + (2 - 0.1 * mL) / V - ((1 / V) * (C1 * h + 2 * C1 * C2)) / (h * h + C1 * h + C1 * C2);
  }),
  systemOf('phosphoric acid with NaOH', 50, [acids.phosphoric], 0, reagents.sodiumHydroxide, (h, mL) => {
    const V = 50 + mL;
    const [a, b, c] = [P1 * h * h, P1 * P2 * h, P1 * P2 * P3];
    return h - Kw / h + (0.1 * mL) / V - ((1 / V) * (a + 2 * b + 3 * c)) / (h * h * h + a + b + c);
  }),
  systemOf('an acid of six protons with NaOH', 80, [six], 0, reagents.sodiumHydroxide),
  systemOf('five families with HCl', 150, five, 10, reagents.hydrochloricAcid),
];

/** One to eight families in one beaker, for the growth of the cost. */
export const growing = [1, 2, 4, 8].map((count) =>
  systemOf(
    `${count} families`,
    60,
    Array.from({ length: count }, (_, i) => ({ ...acids.phosphoric, id: `acid ${i}` })),
    0,
    reagents.sodiumHydroxide,
  ),
);
