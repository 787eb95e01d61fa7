import { settingOf } from '../src/equilibrium/setting.js';
import type { TitrationSetup } from '../src/index.js';
import { engineOf } from '../src/titration/engine.js';
import { writePHs } from '../src/titration/p-hs.js';
import { counted } from '../tests/counted.js';

/** Evaluations of the charge balance a point, counted inside the library: exact, where times are not. */
export function evaluationsPerPoint(
  { analyte, titrant, conditions }: TitrationSetup,
  volumes: Float64Array,
): number {
  const { setting, evaluations } = counted(
    settingOf([analyte, titrant], conditions as Parameters<typeof settingOf>[1]),
  );
  writePHs(engineOf(setting), volumes, new Float64Array(volumes.length));
  return evaluations() / volumes.length;
}
