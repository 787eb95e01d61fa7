import { makeSolution, type Reagent, reagents, tabulate, titrate } from 'protolysis';
import { type EndpointMethod, findEndpoints, fitTitration } from 'protolysis/measurement';

/** Uniform in (0, 1): S. K. Park, K. W. Miller, Commun. ACM 31, 1192–1201 (1988), with their later multiplier 48271. */
function uniforms(seed: number): () => number {
  let state = seed;
  return () => {
    state = (48271 * state) % 2147483647;
    return state / 2147483647;
  };
}

const titrant = (reagent: Reagent) => makeSolution({ contents: [{ reagent, molar: 0.1 }] });
const flaskOf = (reagent: Reagent, molar: number) => makeSolution({ mL: 25, contents: [{ reagent, molar }] });

const cases = [
  {
    flask: 'HCl',
    truth: [25],
    titration: titrate({
      analyte: flaskOf(reagents.hydrochloricAcid, 0.1),
      titrant: titrant(reagents.sodiumHydroxide),
    }),
    methods: ['steepestSlope', 'zeroSecondDerivative', 'granStrong', 'granExcess'],
  },
  {
    flask: 'acetic acid',
    truth: [25],
    titration: titrate({
      analyte: flaskOf(reagents.aceticAcid, 0.1),
      titrant: titrant(reagents.sodiumHydroxide),
    }),
    methods: ['steepestSlope', 'zeroSecondDerivative', 'granWeak', 'granExcess'],
  },
  {
    flask: 'Na2CO3',
    truth: [12.5, 25],
    titration: titrate({
      analyte: flaskOf(reagents.sodiumCarbonate, 0.05),
      titrant: titrant(reagents.hydrochloricAcid),
    }),
    methods: ['steepestSlope', 'zeroSecondDerivative', 'granCarbonate'],
  },
] as const;

const noise = { pH: 0.01, mL: 0.02 };

/** Errors of an end point by one method over simulated runs, mL. */
export interface Spread {
  readonly flask: string;
  readonly method: EndpointMethod | 'fit';
  readonly point: number;
  readonly step: number;
  readonly bias: number;
  readonly spread: number;
  /** Root mean square of the standard uncertainties that were given. */
  readonly given: number;
  /** Share of the runs in which the method found what it was asked for. */
  readonly found: number;
  readonly runs: number;
}

interface Only {
  readonly smoothing?: number;
  readonly flasks?: readonly string[];
}

/**
 * Simulated readings every `step` mL to 45 mL, the first step of random length, each with normal errors of 0.01 in pH and
 * 0.02 mL in volume; the noise is a sum of twelve uniform numbers.
 */
export function spreads(step: number, runs: number, { smoothing, flasks }: Only = {}): readonly Spread[] {
  const uniform = uniforms(20260101);
  const normal = () => Array.from({ length: 12 }, uniform).reduce((sum, u) => sum + u, -6);
  const chosen = cases.filter(({ flask }) => flasks?.includes(flask) ?? true);
  return chosen.flatMap(({ flask, truth, titration, methods }) => {
    const errors = new Map<string, { error: number; given: number }[]>();
    const note = (key: string, error: number, given: number) =>
      errors.set(key, [...(errors.get(key) ?? []), { error, given }]);
    for (let run = 0; run < runs; run += 1) {
      const start = step * uniform();
      const mL = [0, ...Array.from({ length: Math.floor(45 / step) }, (_, k) => start + k * step)];
      const pH = mL.map((v) => titration.pHAt(Math.max(0, v + noise.mL * normal())) + noise.pH * normal());
      for (const method of methods) {
        const how = { method, uncertainty: noise, flask: 25, ...(smoothing ? { smoothing } : {}) };
        const { endpoints } = findEndpoints({ mL, pH, notes: [] }, { ...how, count: truth.length });
        if (endpoints.length !== truth.length) continue;
        for (const [k, { mL: found, estimate }] of endpoints.entries())
          note(`${method} ${k + 1}`, found - (truth[k] as number), estimate.standardUncertainty);
      }
      if (smoothing) continue; // a fit takes no smoothing
      const options = { titration, free: ['sampleAmount', 'probeOffset'], uncertainty: noise } as const;
      const { equivalencePoints } = fitTitration({ mL, pH, notes: [] }, options);
      for (const [k, { mL: found, estimate }] of equivalencePoints.entries())
        note(`fit ${k + 1}`, found - (truth[k] as number), estimate?.standardUncertainty ?? Number.NaN);
    }
    return [...errors].map(([key, list]): Spread => {
      const [method, point] = key.split(' ') as [Spread['method'], string];
      const mean = (of: (each: (typeof list)[number]) => number) =>
        list.reduce((sum, each) => sum + of(each), 0) / list.length;
      const bias = mean(({ error }) => error);
      const spread = Math.sqrt(mean(({ error }) => (error - bias) ** 2));
      const given = Math.sqrt(mean((each) => each.given ** 2));
      return {
        flask,
        method,
        point: Number(point),
        step,
        bias,
        spread,
        given,
        found: list.length / runs,
        runs: list.length,
      };
    });
  });
}

/** As it stands in the guide. */
export const tableOf = (rows: readonly Spread[]): string =>
  tabulate(rows, {
    flask: 'text',
    method: 'text',
    point: 0,
    step: 1,
    bias: 3,
    spread: 3,
    given: 3,
    found: 2,
  });
