import { strongAdditionTo } from '../buffer/strong-addition.js';
import { eitherStrong } from '../buffer/strong-search.js';
import { readGas } from '../equilibrium/conditions.js';
import { pHOf } from '../equilibrium/ph-of.js';
import type { PH } from '../equilibrium/quantities.js';
import { frozen } from '../frozen.js';
import { withView } from '../frozen-with-view.js';
import { plainly } from '../input/describe-value.js';
import { Faults } from '../input/faults.js';
import { fourDigits } from '../print-number.js';
import { cautionsOf } from '../safety/cautions-of.js';
import { partOf } from '../solution/aliquot.js';
import { mixtureOf } from '../solution/mix.js';
import { readSolutions } from '../solution/read-solution.js';
import { type Solution, solutionLimits } from '../solution/solution.js';
import { contentsInLine } from '../solution/view-solution.js';
import type { Indicator } from '../substance/indicator.js';
import { readIndicator } from '../substance/read-indicator.js';
import { makeTitration } from '../titration/make-titration.js';
import { type ReadSetup, readSetup } from '../titration/read-setup.js';
import { usualLastVolume } from '../titration/sampling/usual-last-volume.js';
import type { TitrationSetup } from '../titration/titration.js';

/** One titration of a session. */
export interface SessionTitration {
  readonly setup: TitrationSetup;
  /** Last volume of titrant, mL; 1.5 times the last equivalence volume if left out, or twice the analyte. */
  readonly upTo?: number;
  /** How often each group does it; 1 if left out. */
  readonly runs?: number;
  readonly indicator?: Indicator;
}

/** What a class does. */
export interface SessionRequest {
  readonly groups: number;
  readonly titrations?: readonly SessionTitration[];
  /** Other solutions, such as buffers: each with the volume that is there for one group, mL. */
  readonly solutions?: readonly { readonly solution: Solution; readonly mL: number }[];
  /** What is made beyond the need, as a share of it; 0.2 if left out. */
  readonly reserve?: number;
  /** Volume of titrant for rinsing and filling the tip of a burette, mL a run; 15 if left out. */
  readonly rinse?: number;
}

/** A solution that the class needs. */
export interface SessionSolution {
  readonly what: string;
  /** In all, the reserve included, mL. */
  readonly mL: number;
}

/** A reagent that the class needs. */
export interface SessionReagent {
  readonly id: string;
  readonly name: string;
  readonly mmol: number;
  /** Pure; null where the reagent has no molar mass. */
  readonly grams: number | null;
}

/** What is left at the end, all of it poured together. */
export interface SessionWaste {
  readonly mL: number;
  readonly pH: PH;
  /** The strong acid or base that brings it to pH 7; null where none does. */
  readonly neutralise: { readonly name: string; readonly mmol: number } | null;
}

/** What a session needs: plain data. */
export interface SessionPlan {
  /** Stocks and titrants first. */
  readonly solutions: readonly SessionSolution[];
  readonly reagents: readonly SessionReagent[];
  readonly indicators: readonly { readonly name: string; readonly drops: number; readonly mL: number }[];
  readonly waste: SessionWaste;
  readonly cautions: readonly string[];
  /** The same in lines. */
  readonly text: string;
}

/** What `prepareSession` takes by default: common practice; two drops of indicator of 0.05 mL a flask. */
export const sessionDefaults = /*#__PURE__*/ frozen({
  reserve: 0.2,
  rinse: 15,
  indicatorDrops: 2,
  dropSize: 0.05,
} as const);

/**
 * What a class needs in all: solutions, reagents, indicators, and what its waste takes to be neutral.
 *
 * Every amount is proportional to the number of groups. The waste is everything that was made, poured together in one vessel, as a
 * figure for the order of magnitude: collect it as the local rules say, and let a qualified supervisor decide what may be
 * neutralised and where it goes.
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
  const read = readRequest(request, faults);
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
    reagents: all.contents.map(({ reagent: { id, name, molarMass }, mmol }) => ({
      id,
      name,
      mmol,
      grams: molarMass === undefined ? null : (mmol * molarMass) / 1000,
    })),
    indicators: indicatorsOf(titrations, scale),
    waste: wasteOf(all),
    cautions: [...cautionsOf([...titrations.map(({ setup }) => setupOf(setup)), ...poured])],
  };
  return frozen(withView({ ...plan, text: textOf(plan) }, ({ text }) => text));
}

type Read = ReturnType<typeof readRequest>;

const setupOf = ({ analyte, titrant }: ReadSetup) => ({ analyte, titrant });

/** Solutions of one make-up as one, in the order of first mention. */
function joined(solutions: readonly Solution[]): SessionSolution[] {
  const volumes = new Map<string, number>();
  for (const solution of solutions) {
    const what = contentsInLine(solution);
    volumes.set(what, (volumes.get(what) ?? 0) + solution.mL);
  }
  return [...volumes].map(([what, mL]) => ({ what, mL }));
}

function indicatorsOf(titrations: Read['titrations'], scale: number): SessionPlan['indicators'] {
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

function textOf({ solutions, reagents, indicators, waste, cautions }: Omit<SessionPlan, 'text'>): string {
  const amount = ({ grams, mmol }: SessionReagent) =>
    grams === null ? `${fourDigits(mmol)} mmol` : `${fourDigits(grams)} g (${fourDigits(mmol)} mmol)`;
  const neutral = waste.neutralise
    ? `, neutral with about ${fourDigits(waste.neutralise.mmol)} mmol of ${waste.neutralise.name}`
    : '';
  return [
    'Make:',
    ...solutions.map(({ what, mL }) => `  ${fourDigits(mL)} mL of ${what}`),
    'For that, in all, pure:',
    ...reagents.map((reagent) => `  ${reagent.name}: ${amount(reagent)}`),
    ...(indicators.length > 0 ? ['Indicators:'] : []),
    ...indicators.map(
      ({ name, drops, mL }) => `  ${name}: ${fourDigits(mL)} mL (${fourDigits(drops)} drops)`,
    ),
    `Waste: ${fourDigits(waste.mL)} mL, about pH ${waste.pH.toFixed(1)}${neutral}. Collect it as the local rules say.`,
    'Before anyone pours:',
    ...cautions.map((caution) => `  ${caution}`),
  ].join('\n');
}

function readRequest(value: unknown, faults: Faults) {
  const keys = ['groups', 'titrations', 'solutions', 'reserve', 'rinse'];
  const unread = faults.object(value, 'request', 'a request { groups, titrations, solutions }', keys);
  const list = (key: 'titrations' | 'solutions', what: string) =>
    unread[key] === undefined ? [] : faults.list(unread[key], key, what, 0, 100);
  const titrations = list('titrations', 'a list of { setup }').map((item, k) =>
    readTitration(item, `titrations[${k}]`, faults),
  );
  const others = list('solutions', 'a list of { solution, mL }').map((item, k) => {
    const path = `solutions[${k}]`;
    const part = faults.object(item, path, 'a solution of the session { solution, mL }', ['solution', 'mL']);
    return {
      value: part.solution,
      path: `${path}.solution`,
      mL: faults.number(part.mL, `${path}.mL`, 'a volume in mL', volume),
    };
  });
  // beside the setups, which have been read by now, so that one id means one substance in all of them
  const known = faults.any
    ? []
    : titrations.flatMap(({ setup, path }) => [
        { value: setup.analyte, path: `${path}.setup.analyte` },
        { value: setup.titrant, path: `${path}.setup.titrant` },
      ]);
  const read = readSolutions([...known, ...others, eitherStrong], faults).slice(known.length);
  if (!faults.any && titrations.length + others.length === 0)
    faults.add('missing', 'request', 'at least one titration or solution', undefined, 'without either');
  return {
    groups: faults.number(unread.groups, 'groups', 'a number of groups', {
      from: 1,
      to: 10_000,
      integer: true,
    }),
    titrations,
    others: others.map(({ mL }, k) => ({ solution: read[k] as Solution, mL })),
    reserve:
      unread.reserve === undefined
        ? sessionDefaults.reserve
        : faults.number(unread.reserve, 'reserve', 'a share', { from: 0, to: 10 }),
    rinse:
      unread.rinse === undefined
        ? sessionDefaults.rinse
        : faults.number(unread.rinse, 'rinse', 'a volume in mL', { from: 0, to: 1e4 }),
  };
}

const volume = { from: 0.01, to: 1e5 };

function readTitration(value: unknown, path: string, faults: Faults) {
  const unread = faults.object(value, path, 'a titration of the session { setup, upTo, runs, indicator }', [
    'setup',
    'upTo',
    'runs',
    'indicator',
  ]);
  const before = faults.count;
  const setup = readSetup(unread.setup, `${path}.setup`, faults);
  readGas([setup.analyte, setup.titrant], setup.inUse, `${path}.setup.conditions`, faults);
  const given =
    unread.upTo === undefined ? null : faults.number(unread.upTo, `${path}.upTo`, 'a volume in mL', volume);
  const runs =
    unread.runs === undefined
      ? 1
      : faults.number(unread.runs, `${path}.runs`, 'a number of runs', { from: 1, to: 1000, integer: true });
  const indicator =
    unread.indicator === undefined ? null : readIndicator(unread.indicator, `${path}.indicator`, faults);
  const usual = () =>
    Math.min(usualLastVolume(makeTitration(setup).equivalencePoints, setup.analyte), volume.to);
  return { path, setup, upTo: given ?? (faults.count > before ? 1 : usual()), runs, indicator };
}
