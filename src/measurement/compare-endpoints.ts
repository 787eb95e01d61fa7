import { frozen } from '../frozen.js';
import { Faults } from '../input/faults.js';
import {
  checkSmoothing,
  type EndpointMethod,
  type EndpointOptions,
  needsFlask,
  readMethod,
  readSearch,
} from './endpoint-options.js';
import { endpointsBy } from './endpoints-by.js';
import type { Estimate } from './estimate.js';
import { readReadingColumns } from './read-reading-columns.js';
import type { Readings } from './readings.js';

/** What a comparison of methods needs, beside what each method does. */
export interface CompareEndpointsOptions extends Omit<EndpointOptions, 'method' | 'window'> {
  /** In the order of the table; by default those that serve any titration: by slope and, with `flask`, `granExcess`. */
  readonly methods?: readonly EndpointMethod[];
  /** End points found by other ways, such as a fit, to stand in the table: those of one method by volume. */
  readonly others?: readonly { readonly method: string; readonly estimate: Estimate }[];
}

/** One row of the table, for `tabulate`. */
export interface EndpointRow {
  readonly method: string;
  /** Of several end points by one method, which: 1 for the first. */
  readonly point: number;
  readonly mL: number;
  /** mL. */
  readonly standardUncertainty: number;
  readonly notes: readonly string[];
}

/**
 * The end points by several methods in one table.
 *
 * @throws InputError that lists every fault
 * @example
 * ```ts
 * import { tabulate } from 'protolysis';
 * import { compareEndpoints } from 'protolysis/measurement';
 *
 * // 25.00 mL of acetic acid by 0.100 mol/L sodium hydroxide, from a textbook
 * const mL = [0, 10, 20, 24, 24.9, 25, 25.1, 26, 30, 50];
 * const pH = [2.87, 4.57, 5.35, 6.13, 7.14, 8.72, 10.3, 11.29, 11.96, 12.52];
 * const methods = ['steepestSlope', 'granWeak', 'granExcess'] as const;
 * const rows = compareEndpoints({ mL, pH, notes: [] }, { methods, flask: 25 });
 * console.log(tabulate(rows, { method: 'text', mL: 2, standardUncertainty: 2 }));
 * ```
 *
 * ```text
 * method            mL  standardUncertainty
 * steepestSlope  24.95                 0.03
 * granWeak       24.98                 0.02
 * granExcess     24.97                 0.06
 * ```
 */
export function compareEndpoints(
  readings: Readings,
  options: CompareEndpointsOptions = {},
): readonly EndpointRow[] {
  const faults = new Faults('compareEndpoints');
  const given = readReadingColumns(readings, 'readings', faults, { least: 5, rising: true });
  const keys = ['methods', 'others', 'count', 'smoothing', 'uncertainty', 'flask'];
  const unread = faults.object(options, 'options', 'options', keys);
  const usual = [
    'steepestSlope',
    'zeroSecondDerivative',
    ...(unread.flask === undefined ? [] : ['granExcess']),
  ];
  const methods = faults
    .list(unread.methods ?? usual, 'options.methods', 'a list of methods', 0, 20)
    .map((method, k) => readMethod(method, `options.methods[${k}]`, faults));
  const others = faults
    .list(unread.others ?? [], 'options.others', 'a list of { method, estimate }', 0, 100)
    .map((other, k) => readOther(other, `options.others[${k}]`, faults));
  const search = readSearch(unread, methods.find(needsFlask) ?? 'steepestSlope', faults);
  checkSmoothing(search, given, faults);
  faults.done();
  const found = methods.flatMap((method) => {
    const { endpoints, notes } = endpointsBy(given, { ...search, method });
    return endpoints.map(({ estimate }, k) => rowOf(method, k, estimate, notes));
  });
  const before = (k: number) =>
    others.slice(0, k).filter(({ method }) => method === others[k]?.method).length;
  return frozen([
    ...found,
    ...others.map(({ method, estimate }, k) => rowOf(method, before(k), estimate, [])),
  ]);
}

const rowOf = (
  method: string,
  k: number,
  { value, standardUncertainty }: Estimate,
  notes: readonly string[],
): EndpointRow => ({
  method,
  point: k + 1,
  mL: value,
  standardUncertainty,
  notes,
});

function readOther(value: unknown, path: string, faults: Faults): { method: string; estimate: Estimate } {
  const unread = faults.object(value, path, 'an end point { method, estimate }', ['method', 'estimate']);
  const what = 'an estimate { value, standardUncertainty, degreesOfFreedom }';
  const estimate = faults.object(unread.estimate, `${path}.estimate`, what, [
    'value',
    'standardUncertainty',
    'degreesOfFreedom',
  ]);
  return {
    method: faults.text(unread.method, `${path}.method`, 'a name'),
    estimate: {
      value: faults.number(estimate.value, `${path}.estimate.value`, 'a volume in mL', {
        from: -1e6,
        to: 1e6,
      }),
      standardUncertainty: faults.number(
        estimate.standardUncertainty,
        `${path}.estimate.standardUncertainty`,
        'a standard uncertainty in mL',
        { from: 0, to: 1e6 },
      ),
      degreesOfFreedom:
        estimate.degreesOfFreedom === null ? null : readFreedom(estimate.degreesOfFreedom, path, faults),
    },
  };
}

const readFreedom = (value: unknown, path: string, faults: Faults): number =>
  faults.number(
    value,
    `${path}.estimate.degreesOfFreedom`,
    'degrees of freedom, or null for infinitely many',
    { above: 0 },
  );
