// The lists to choose from are the catalogue's own.
import { indicators, reagents } from 'protolysis';
import { inputOf, make } from './elements.mjs';

/** The invented assay that the page begins with. */
const first = {
  analyte: reagents.sodiumCarbonate,
  titrant: reagents.hydrochloricAcid,
  indicator: indicators.bromocresolGreen,
};

/** Fills the lists of the form from the catalogue, by name. */
export function fillChoices() {
  fill('analyte', Object.values(reagents), first.analyte.id);
  fill('titrant', Object.values(reagents), first.titrant.id);
  fill('indicator', Object.values(indicators), first.indicator.id);
}

/**
 * @param {string} id of the list
 * @param {readonly { readonly id: string, readonly name: string }[]} entries
 * @param {string} chosen
 */
function fill(id, entries, chosen) {
  const inOrder = [...entries].sort((a, b) => a.name.localeCompare(b.name, 'en', { sensitivity: 'base' }));
  const options = inOrder.map((entry) => {
    const option = make('option', entry.name);
    option.setAttribute('value', entry.id);
    option.toggleAttribute('selected', entry.id === chosen);
    return option;
  });
  inputOf(id).append(...options);
}
