import { frozen } from '../frozen.js';

/** Limits of a pH that a probe can show. Common practice: scales of meters end between. @internal */
export const plausiblePH = /*#__PURE__*/ frozen({ from: -2, to: 16 });
