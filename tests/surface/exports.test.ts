import ts from 'typescript';
import { expect, test } from 'vitest';
import { read } from '../tree.js';

/** Every name that users may import, by entry; types are marked. What goes from here goes from somebody's code. */
const surface: Record<string, readonly string[]> = {
  index: [
    'InputError',
    'absorbCarbonDioxide',
    'acids',
    'activityLimits',
    'addWater',
    'air',
    'aliquot',
    'batesGuggenheim',
    'cautionsOf',
    'compareModels',
    'compareWater',
    'conditionDefaults',
    'conditionLimits',
    'davies',
    'daviesOf',
    'debyeHuckelAt',
    'debyeHuckelExtended',
    'debyeHuckelExtendedOf',
    'debyeHuckelLimiting',
    'defineProtolyte',
    'defineReagent',
    'equilibrate',
    'guntelberg',
    'henryFit',
    'ideal',
    'kiellandSizes',
    'kiellandSource',
    'lastCaution',
    'makeSolution',
    'makeStock',
    'makeUpTo',
    'mix',
    'molarMassOf',
    'molarOf',
    'pHOf',
    'pKHAt',
    'pKaAt',
    'pKwAt',
    'phStandards',
    'printFormula',
    'protolyteLimits',
    'reagents',
    'rows',
    'sizeOtherwise',
    'solutionDefaults',
    'solutionLimits',
    'sourcesOf',
    'tabulate',
    'titrate',
    'titrationDefaults',
    'titrationLimits',
    'type ActivityModel',
    'type Additions',
    'type Alternative',
    'type BoilOut',
    'type CarbonDioxide',
    'type ColumnFormat',
    'type CommonPractice',
    'type Conditions',
    'type Content',
    'type Curve',
    'type CurvePoint',
    'type DebyeHuckelParameters',
    'type Equilibrium',
    'type EquivalencePoint',
    'type FromMemory',
    'type Handled',
    'type InflectionPoint',
    'type Ingredient',
    'type Ion',
    'type IonSizes',
    'type Issue',
    'type IssueCode',
    'type ModelComparison',
    'type PH',
    'type PHStandard',
    'type PcH',
    'type Protolyte',
    'type PublishedSource',
    'type Quantity',
    'type Reagent',
    'type Shift',
    'type Solution',
    'type SolutionRecipe',
    'type Source',
    'type SourceUse',
    'type Species',
    'type SpeciesAt',
    'type Step',
    'type TemperatureFit',
    'type Titration',
    'type TitrationSetup',
    'type Water',
    'type WaterComparison',
    'type WaterInUse',
    'type Work',
    'waterAt25',
    'waterSources',
    'waters',
    'works',
  ],
};

/** The names in the export lists of an entry, which is nothing but such lists. */
function exportsOf(path: string): string[] {
  const names: string[] = [];
  for (const statement of ts.createSourceFile(path, read(path), ts.ScriptTarget.ESNext).statements) {
    const clause = ts.isExportDeclaration(statement) ? statement.exportClause : undefined;
    if (!ts.isExportDeclaration(statement) || !clause)
      throw new Error(`${path} holds more than export lists`);
    if (ts.isNamespaceExport(clause)) names.push(clause.name.text);
    else
      for (const { name, isTypeOnly } of clause.elements)
        names.push(isTypeOnly || statement.isTypeOnly ? `type ${name.text}` : name.text);
  }
  return names.sort();
}

const entries: Record<string, string> = JSON.parse(read('package.json')).tsup.entry;

test('each entry exports what it did, and no more', () => {
  const exported = Object.fromEntries(Object.entries(entries).map(([name, path]) => [name, exportsOf(path)]));
  expect(exported).toEqual(surface);
});

test('the values that the list promises are there', async () => {
  for (const [entry, names] of Object.entries(surface)) {
    const loaded: object = await import(entry === 'index' ? 'protolysis' : `protolysis/${entry}`);
    expect(Object.keys(loaded).sort()).toEqual(names.filter((name) => !name.startsWith('type ')));
  }
});
