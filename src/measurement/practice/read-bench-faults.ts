import type { Faults } from '../../input/faults.js';
import { nearestName } from '../../input/nearest-name.js';
import { benchEffects, benchFaultKinds } from './bench-effects.js';
import type { BenchFault, BenchFaultKind } from './bench-fault.js';

/** Reads what went wrong at the bench, each kind once; hands it on in the order in which it acts. @internal */
export function readBenchFaults(value: unknown, path: string, faults: Faults): readonly BenchFault[] {
  const before = faults.count;
  const what = "a list of faults, such as { kind: 'probeOffset', pH: 0.2 }";
  const read = faults
    .list(value, path, what, 0, benchFaultKinds.length)
    .map((item, k) => readBenchFault(item, `${path}[${k}]`, faults));
  for (const [k, { kind }] of faults.count > before ? [] : read.entries())
    if (read.findIndex((other) => other.kind === kind) < k)
      faults.add('conflict', `${path}[${k}].kind`, 'each kind of fault once', kind);
  return benchFaultKinds.flatMap((kind) => read.filter((fault) => fault.kind === kind));
}

function readBenchFault(value: unknown, path: string, faults: Faults): BenchFault {
  const before = faults.count;
  const unread = faults.object(value, path, 'a fault { kind } with its size');
  const kind = readFaultKind(unread.kind, `${path}.kind`, faults);
  const sizes = faults.count > before ? [] : Object.entries(benchEffects[kind].sizes);
  const keys = ['kind', ...sizes.map(([key]) => key)];
  if (faults.count === before) faults.object(unread, path, `a fault { ${keys.join(', ')} }`, keys);
  const numbers = sizes.map(([key, { what, limits }]) => [
    key,
    faults.number(unread[key], `${path}.${key}`, what, limits),
  ]);
  return { kind, ...Object.fromEntries(numbers) };
}

/** Reads the name of a fault. @internal */
export function readFaultKind(value: unknown, path: string, faults: Faults): BenchFaultKind {
  const known = benchFaultKinds.find((kind) => kind === value);
  if (known) return known;
  const near = typeof value === 'string' ? nearestName(value, benchFaultKinds) : undefined;
  const all = `one of ${benchFaultKinds.join(', ')}`;
  faults.add(
    value === undefined ? 'missing' : 'wrong-type',
    path,
    near ? `${near}, if that is meant, or ${all}` : all,
    value,
  );
  return 'incrementsAsTotals';
}
