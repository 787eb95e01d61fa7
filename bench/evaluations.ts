import { readConditions } from '../src/equilibrium/conditions.js';
import { settingOf } from '../src/equilibrium/setting.js';
import { Faults } from '../src/errors.js';
import type { TitrationSetup } from '../src/index.js';
import { engineOf } from '../src/titration/engine.js';
import { writePHs } from '../src/titration/p-hs.js';
import { counted } from '../tests/counted.js';

/** Evaluations of the charge balance a point, counted inside the library: exact, where times are not. */
export function evaluationsPerPoint(
  { analyte, titrant, conditions }: TitrationSetup,
  volumes: Float64Array,
): number {
  const settled = readConditions(conditions, 'conditions', new Faults('evaluationsPerPoint'));
  const { setting, evaluations } = counted(settingOf([analyte, titrant], settled));
  writePHs(engineOf(setting), volumes, new Float64Array(volumes.length));
  return evaluations() / volumes.length;
}
