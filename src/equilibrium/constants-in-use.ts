import { doubles } from '../solver/arithmetic.js';
import type { Source } from '../source.js';
import { henryAt, henryFit } from './carbon-dioxide.js';
import { conditionDefaults } from './conditions.js';
import type { System } from './system.js';
import { stepAt } from './temperature/pka-at.js';
import { ownPKwAt } from './temperature/pkw-at.js';
import { waterAt25 } from './temperature/water-at-25.js';
import { waterDensityAt } from './temperature/water-density.js';
import { waterSources } from './temperature/water-sources.js';

/** A constant of water or of a gas that a result rests on, beside what its substances and its law of activity bring. */
export interface ConstantInUse {
  readonly name: string;
  readonly value: number;
  readonly source: Source;
}

/** Those that conditions call for. A value that the caller gave instead is not listed. @internal */
export function constantsInUse({ inUse, gas }: System): ConstantInUse[] {
  const { celsius, pKw, carbonDioxide } = inUse;
  const constants: ConstantInUse[] = [];
  if (pKw === ownPKwAt(celsius)) {
    constants.push({ name: `${waterAt25.name}, pKw`, value: pKw, source: waterAt25.source });
    if (celsius !== conditionDefaults.celsius) {
      const value = waterDensityAt(doubles, celsius) / 1000;
      constants.push({ name: 'density of water, g/mL, for its pKw', value, source: waterSources.density });
    }
  }
  if (carbonDioxide && carbonDioxide.pKH === undefined)
    constants.push({ name: `${henryFit.name}, pKH`, value: henryAt(celsius), source: henryFit.source });
  for (const [k, step] of (gas?.protolyte.steps ?? []).entries())
    constants.push({
      name: `${gas?.protolyte.name}, pKa ${k + 1}`,
      value: stepAt(step, celsius),
      source: step.source,
    });
  return constants;
}
