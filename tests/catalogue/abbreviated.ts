/**
 * Atoms of the most protonated form of acids whose formulas here are abbreviations of the trade (HEPES, EDTA): the molecular
 * formulas of suppliers' labels, with the protons that the form has taken up.
 */
export const atomsOfAbbreviated: Readonly<Record<string, string>> = {
  aces: 'C4H10N2O4S',
  ada: 'C6H11N2O5',
  bes: 'C6H15NO5S',
  bicine: 'C6H14NO4',
  caps: 'C9H19NO3S',
  ches: 'C8H17NO3S',
  edta: 'C10H18N2O8',
  epps: 'C9H20N2O4S',
  hepes: 'C8H19N2O4S',
  mes: 'C6H13NO4S',
  mops: 'C7H15NO4S',
  mopso: 'C7H15NO5S',
  pipes: 'C8H18N2O6S2',
  taps: 'C7H17NO6S',
  tes: 'C6H15NO6S',
  tricine: 'C6H14NO5',
};
