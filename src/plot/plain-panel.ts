import type { Axis } from './axis.js';
import type { Panel } from './figure.js';

/** A panel with what is given and nothing else. @internal */
export const plainPanel = (y: Axis, given: Partial<Omit<Panel, 'kind' | 'y'>>): Panel => ({
  kind: 'panel',
  y,
  share: 1,
  areas: [],
  lines: [],
  dots: [],
  marks: [],
  rules: [],
  ...given,
});
