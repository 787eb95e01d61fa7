import { readConditions } from '../src/equilibrium/conditions.js';
import { systemOf } from '../src/equilibrium/system.js';
import type { TitrationSetup } from '../src/index.js';
import { Faults } from '../src/input/faults.js';
import { mixtureModelOf } from '../src/titration/model/mixture-model.js';
import { writePHs } from '../src/titration/sampling/ph-at-volumes.js';
import { counted } from '../tests/counted.js';

/** Evaluations of the charge balance a point, counted inside the library: exact, where times are not. */
export function evaluationsPerPoint(
  { analyte, titrant, conditions }: TitrationSetup,
  volumes: Float64Array,
): number {
  const inUse = readConditions(conditions, 'conditions', new Faults('evaluationsPerPoint'));
  const { system, evaluations } = counted(systemOf([analyte, titrant], inUse));
  writePHs(mixtureModelOf(system), volumes, new Float64Array(volumes.length));
  return evaluations() / volumes.length;
}
