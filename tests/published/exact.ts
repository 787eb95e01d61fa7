import { readFileSync } from 'node:fs';
import { tolerance } from '../reference/vectors.js';

type Row = readonly [V: string, pH: string, condition: string];

const answers = JSON.parse(readFileSync(new URL('exact.json', import.meta.url), 'utf8')) as Record<
  string,
  readonly Row[]
>;

/** The example solved to 20 digits by exact.py, each with the tolerance that ../reference/vectors/README.md derives. */
export function exactOf(name: string): readonly { mL: number; pH: number; tolerance: number }[] {
  const rows = answers[name];
  if (rows === undefined) throw new Error(`exact.json has no ${name}`);
  return rows.map(([V, pH, condition]) => ({
    mL: Number(V),
    pH: Number(pH),
    tolerance: tolerance(condition, Number(pH)),
  }));
}
