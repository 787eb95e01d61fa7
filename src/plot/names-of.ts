import type { Solution } from '../solution/solution.js';
import type { TitrationSetup } from '../titration/titration.js';

/** What is titrated with what, by the names of what the solutions hold. @internal */
export const namesOf = ({ analyte, titrant }: TitrationSetup) => ({
  analyte: contentsOf(analyte),
  titrant: contentsOf(titrant),
});

const contentsOf = ({ name, contents }: Solution): string =>
  contents.length === 0
    ? (name ?? 'water')
    : [...new Set(contents.map(({ reagent }) => reagent.name))].join(' + ');
