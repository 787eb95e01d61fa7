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
    'chooseIndicators',
    'chooseTransition',
    'colourAt',
    'colourLabel',
    'colourless',
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
    'defineIndicator',
    'defineProtolyte',
    'defineReagent',
    'equilibrate',
    'flaskColours',
    'guntelberg',
    'henryFit',
    'ideal',
    'indicatorDefaults',
    'indicatorLimits',
    'indicators',
    'kiellandSizes',
    'kiellandSource',
    'lastCaution',
    'makeSolution',
    'makeStock',
    'makeUpTo',
    'mix',
    'molarMassOf',
    'molarOf',
    'observerLimits',
    'overshoot',
    'overshootDefaults',
    'pHOf',
    'pKHAt',
    'pKaAt',
    'pKwAt',
    'phStandards',
    'printFormula',
    'protolyteLimits',
    'rankIndicators',
    'reagents',
    'referenceTubes',
    'rows',
    'scoreIndicator',
    'sizeOtherwise',
    'solutionDefaults',
    'solutionLimits',
    'sourcesOf',
    'tabulate',
    'titrate',
    'titrationDefaults',
    'titrationLimits',
    'tubeMargin',
    'type ActivityModel',
    'type Additions',
    'type Alternative',
    'type Band',
    'type Bands',
    'type BoilOut',
    'type CarbonDioxide',
    'type Channels',
    'type Colour',
    'type ColumnFormat',
    'type CommonPractice',
    'type Conditions',
    'type Content',
    'type Curve',
    'type CurvePoint',
    'type DebyeHuckelParameters',
    'type Equilibrium',
    'type EquivalencePoint',
    'type FlaskColours',
    'type FromMemory',
    'type Handled',
    'type Indicator',
    'type IndicatorAlternatives',
    'type IndicatorChoice',
    'type IndicatorScore',
    'type InflectionPoint',
    'type Ingredient',
    'type Ion',
    'type IonSizes',
    'type Issue',
    'type IssueCode',
    'type ModelComparison',
    'type Observer',
    'type OvershootDrop',
    'type PH',
    'type PHStandard',
    'type Part',
    'type PcH',
    'type Protolyte',
    'type PublishedSource',
    'type Quantity',
    'type Reagent',
    'type ReferenceTube',
    'type ReferenceTubes',
    'type ScoreOptions',
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
    'type TitrationExponent',
    'type TitrationSetup',
    'type Transition',
    'type TubeRecipe',
    'type Verdict',
    'type Water',
    'type WaterComparison',
    'type WaterInUse',
    'type Work',
    'verdictScores',
    'waterAt25',
    'waterSources',
    'waters',
    'works',
  ],
  colour: [
    'colourDifference',
    'rankBySight',
    'sightDefaults',
    'type SeenDifference',
    'type SightOptions',
    'type SightScore',
    'type VisibleChange',
    'type Vision',
    'visibleChange',
    'visions',
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
