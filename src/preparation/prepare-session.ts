import { strongAdditionTo } from '../buffer/strong-addition.js';
import { asSold } from '../catalogue/as-sold.js';
import { entryOf } from '../entry-of.js';
import { pHOf } from '../equilibrium/ph-of.js';
import { frozenWithView } from '../frozen-with-view.js';
import { plainly } from '../input/describe-value.js';
import { Faults } from '../input/faults.js';
import { cautionsOf } from '../safety/cautions-of.js';
import { partOf } from '../solution/aliquot.js';
import { mixtureOf } from '../solution/mix.js';
import { type Content, type Solution, solutionLimits } from '../solution/solution.js';
import { contentsInLine } from '../solution/view-solution.js';
import { type ReadSession, readSession } from './read-session.js';
import {
  type SessionPlan,
  type SessionReagent,
  type SessionRequest,
  type SessionSolution,
  type SessionWaste,
  sessionDefaults,
} from './session-plan.js';
import { sessionText } from './session-text.js';

/**
 * What a class needs in all: solutions, reagents, indicators, and what its waste takes to be neutral.
 *
 * Every amount is proportional to the number of groups. The waste is everything that was made, poured together in one
 * vessel, as a figure for the order of magnitude: collect it as the local rules say, and let a qualified supervisor
 * decide what may be neutralised and where it goes.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { makeSolution, prepareSession, reagents } from 'protolysis';
 *
 * const session = prepareSession({
 *   groups: 12,
 *   titrations: [
 *     {
 *       setup: {
 *         analyte: makeSolution({ mL: 25, contents: [{ reagent: reagents.sodiumCarbonate, molar: 0.05 }] }),
 *         titrant: makeSolution({ contents: [{ reagent: reagents.hydrochloricAcid, molar: 0.1 }] }),
 *       },
 *       upTo: 35,
 *       runs: 3,
 *     },
 *   ],
 * });
 * session.solutions[0]; // => { what: 'hydrochloric acid 0.1 mol/L', mL: 2160 }
 * session.reagents[1]?.grams; // => 5.723
 * ```
 */
export function prepareSession(request: SessionRequest): SessionPlan {
  const faults = new Faults('prepareSession');
  const read = readSession(request, faults);
  faults.done();
  const { groups, titrations, others, reserve, rinse } = read;
  const perGroup = [
    ...titrations.map(({ setup, upTo, runs }) => (upTo + rinse + setup.analyte.mL) * runs),
    ...others.map(({ mL }) => mL),
  ].reduce((total, mL) => total + mL, 0);
  if (perGroup * groups * (1 + reserve) > solutionLimits.mL)
    faults.add(
      'out-of-range',
      'groups',
      `a session of no more than ${plainly(solutionLimits.mL)} mL in all`,
      groups,
    );
  faults.done();

  const scale = groups * (1 + reserve);
  const titrants = titrations.map(({ setup, upTo, runs }) =>
    partOf(setup.titrant, (upTo + rinse) * runs * scale),
  );
  const analytes = titrations.map(({ setup, runs }) =>
    partOf(setup.analyte, setup.analyte.mL * runs * scale),
  );
  const poured = others.map(({ solution, mL }) => partOf(solution, mL * scale));
  const solutions = joined([...titrants, ...poured, ...analytes]);
  const all = mixtureOf([...titrants, ...poured, ...analytes]);
  const plan = {
    solutions,
    reagents: all.contents.map(reagentOf),
    indicators: indicatorsOf(titrations, scale),
    waste: wasteOf(all),
    cautions: [...cautionsOf([...bottlesOf(titrations, all), ...titrations.map(setupOf), ...poured])],
  };
  return frozenWithView({ ...plan, text: sessionText(plan) }, ({ text }) => text);
}

/** What the preparation room opens: the solutions are made from bottles, whose words are others. */
const bottlesOf = (titrations: ReadSession['titrations'], all: Solution) => [
  ...all.contents.map(({ reagent }) => reagent),
  ...titrations.flatMap(({ indicator }) => (indicator ? [indicator] : [])),
];

const setupOf = ({ setup: { analyte, titrant } }: ReadSession['titrations'][number]) => ({
  analyte,
  titrant,
});

function reagentOf({ reagent, mmol }: Content): SessionReagent {
  const { id, name, molarMass } = reagent;
  if (molarMass === undefined) return { id, name, mmol, grams: null, bottle: null };
  const grams = (mmol * molarMass) / 1000;
  const sold = entryOf(asSold, id);
  if (!sold || sold.alsoSolid) return { id, name, mmol, grams, bottle: null };
  const { massPercent, density } = sold;
  const ofBottle = (100 * grams) / massPercent;
  return { id, name, mmol, grams, bottle: { massPercent, grams: ofBottle, mL: ofBottle / density } };
}

/** Solutions of one make-up as one, in the order of first mention. */
function joined(solutions: readonly Solution[]): SessionSolution[] {
  const volumes = new Map<string, number>();
  for (const solution of solutions) {
    const what = contentsInLine(solution);
    volumes.set(what, (volumes.get(what) ?? 0) + solution.mL);
  }
  return [...volumes].map(([what, mL]) => ({ what, mL }));
}

function indicatorsOf(titrations: ReadSession['titrations'], scale: number): SessionPlan['indicators'] {
  const drops = new Map<string, number>();
  for (const { indicator, runs } of titrations)
    if (indicator)
      drops.set(
        indicator.name,
        (drops.get(indicator.name) ?? 0) + sessionDefaults.indicatorDrops * runs * scale,
      );
  return [...drops].map(([name, count]) => ({ name, drops: count, mL: count * sessionDefaults.dropSize }));
}

function wasteOf(all: Solution): SessionWaste {
  const addition = strongAdditionTo(all, 7);
  return {
    mL: all.mL,
    pH: pHOf(all),
    neutralise: addition.status === 'found' ? { name: addition.reagent.name, mmol: addition.mmol } : null,
  };
}
