import ts from 'typescript';
import { expect, test } from 'vitest';
import { read } from '../tree.js';

/** Every name that users may import, by entry; types are marked. What goes from here goes from somebody's code. */
const surface: Record<string, readonly string[]> = {
  index: [
    'InputError',
    'acids',
    'addWater',
    'aliquot',
    'bufferDefaults',
    'bufferLimits',
    'bufferResponse',
    'capacityOf',
    'capacityOver',
    'cautionsOf',
    'chooseBuffer',
    'chooseIndicators',
    'chooseTransition',
    'colourAt',
    'colourLabel',
    'colourless',
    'conditionLimits',
    'defineIndicator',
    'defineProtolyte',
    'defineReagent',
    'equilibrate',
    'estimateByLogRatio',
    'flaskColours',
    'indicatorDefaults',
    'indicatorLimits',
    'indicators',
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
    'prepareBuffer',
    'printFormula',
    'protolyteLimits',
    'rankIndicators',
    'reagents',
    'referenceTubes',
    'reserveOf',
    'rows',
    'scoreIndicator',
    'solutionDefaults',
    'solutionLimits',
    'sourcesOf',
    'strongAdditionTo',
    'tabulate',
    'titrate',
    'titrationDefaults',
    'titrationLimits',
    'tubeMargin',
    'type Additions',
    'type Alternative',
    'type Amount',
    'type Band',
    'type Bands',
    'type BufferAddition',
    'type BufferCandidate',
    'type BufferChoice',
    'type BufferIngredient',
    'type BufferPart',
    'type BufferRecipe',
    'type BufferRequest',
    'type BufferResponse',
    'type CapacityCurve',
    'type CapacityPeak',
    'type CapacityRange',
    'type Channels',
    'type Colour',
    'type ColumnFormat',
    'type CommonPractice',
    'type Conditions',
    'type Content',
    'type Curve',
    'type CurvePoint',
    'type Equilibrium',
    'type EquivalencePoint',
    'type FlaskColours',
    'type FromMemory',
    'type Handled',
    'type ImpossibleBuffer',
    'type Indicator',
    'type IndicatorAlternatives',
    'type IndicatorChoice',
    'type IndicatorScore',
    'type InflectionPoint',
    'type Ingredient',
    'type Ion',
    'type Issue',
    'type IssueCode',
    'type LogRatioEstimate',
    'type Observer',
    'type OvershootDrop',
    'type PH',
    'type Part',
    'type PcH',
    'type Protolyte',
    'type PublishedSource',
    'type Quantity',
    'type Reagent',
    'type ReferenceTube',
    'type ReferenceTubes',
    'type Reserve',
    'type ReserveOptions',
    'type ReservePoint',
    'type ScoreOptions',
    'type Solution',
    'type SolutionRecipe',
    'type Source',
    'type SourceUse',
    'type Species',
    'type SpeciesAt',
    'type Step',
    'type StrongAddition',
    'type Titration',
    'type TitrationExponent',
    'type TitrationSetup',
    'type Transition',
    'type TubeRecipe',
    'type Verdict',
    'type Work',
    'verdictScores',
    'waterAt25',
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
