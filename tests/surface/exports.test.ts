import ts from 'typescript';
import { expect, test } from 'vitest';
import { read } from '../tree.js';

const list = (names: string): readonly string[] => names.trim().split(/\s+/);

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
    'columnLimits',
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
    'estimateByLogRatio',
    'flaskColours',
    'gasesFrom',
    'guntelberg',
    'heatLimits',
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
    'pHStandards',
    'pHsOf',
    'pKHAt',
    'pKaAt',
    'pKwAt',
    'prepareBuffer',
    'printFormula',
    'protolyteLimits',
    'rankIndicators',
    'reagents',
    'referenceTubes',
    'reserveOf',
    'rows',
    'scoreIndicator',
    'sharpestCall',
    'sizeOtherwise',
    'solutionDefaults',
    'solutionLimits',
    'sourcesOf',
    'strongAdditionTo',
    'tabulate',
    'titrate',
    'titrationDefaults',
    'titrationLimits',
    'tubeMargin',
    'type ActivityModel',
    'type Additions',
    'type Alternative',
    'type Amount',
    'type AssumedVolume',
    'type Band',
    'type Bands',
    'type BoilOut',
    'type Bottle',
    'type BufferAddition',
    'type BufferCandidate',
    'type BufferChoice',
    'type BufferIngredient',
    'type BufferPart',
    'type BufferRanking',
    'type BufferRecipe',
    'type BufferRequest',
    'type BufferResponse',
    'type CapacityCurve',
    'type CapacityPeak',
    'type CapacityRange',
    'type CarbonDioxide',
    'type Channels',
    'type Colour',
    'type ColumnFormat',
    'type CommonPractice',
    'type Conditions',
    'type ConstantInUse',
    'type Content',
    'type Curve',
    'type CurvePoint',
    'type DebyeHuckelParameters',
    'type Equilibrium',
    'type EquivalencePoint',
    'type FlaskColours',
    'type FromMemory',
    'type GasSetFree',
    'type Handled',
    'type Hazard',
    'type HazardLimit',
    'type HeatOfMixing',
    'type ImpossibleBuffer',
    'type Indicator',
    'type IndicatorAlternatives',
    'type IndicatorChoice',
    'type IndicatorFacts',
    'type IndicatorRanking',
    'type IndicatorScore',
    'type IndicatorSet',
    'type InflectionPoint',
    'type Ingredient',
    'type Ion',
    'type IonSizes',
    'type Issue',
    'type IssueCode',
    'type LeftOut',
    'type LiquidPart',
    'type LogRatioEstimate',
    'type ModelComparison',
    'type Observer',
    'type OvershootDrop',
    'type PH',
    'type PHStandard',
    'type Part',
    'type PcH',
    'type PointToFind',
    'type Poured',
    'type PouredPart',
    'type PouredSolution',
    'type Protolyte',
    'type PublishedSource',
    'type Quantity',
    'type RankingNotes',
    'type RankingOptions',
    'type Reagent',
    'type Recipe',
    'type RecipePart',
    'type ReferenceTube',
    'type ReferenceTubes',
    'type Reserve',
    'type ReserveOptions',
    'type ReservePoint',
    'type ScoreOptions',
    'type ScoreWithDavies',
    'type Shift',
    'type Solution',
    'type SolutionColumns',
    'type SolutionRecipe',
    'type Source',
    'type SourceUse',
    'type SparinglySoluble',
    'type Species',
    'type SpeciesAt',
    'type Step',
    'type StockSolution',
    'type StrongAddition',
    'type TemperatureFit',
    'type Titration',
    'type TitrationError',
    'type TitrationExponent',
    'type TitrationSetup',
    'type Transition',
    'type TubeRecipe',
    'type Verdict',
    'type Water',
    'type WaterComparison',
    'type WaterInUse',
    'type WeighedPart',
    'type Work',
    'verdictScores',
    'waterAt25',
    'waterSources',
    'waters',
    'works',
  ],
  acids: list(`
    aces acetic ada adipic alanine ammonium anilinium arsenic ascorbic barbituric benzoic bes bicine
    bisTris boric caps carbonic ches chloroacetic chromic citric cysteine dichloroacetic diethanolammonium
    dimethylammonium edta epps ethanolammonium ethylenediammonium formic fumaric glutamicAcid glycine
    glycolic hepes histidine hydrazinium hydrocyanic hydrofluoric hydrogenPeroxide hydrogenSulfide
    hydroxylammonium hypochlorous imidazolium iodic lactic lysine maleic malic malonic mes methylammonium
    mops mopso nitrous oxalic phenol phosphoric phthalic pipes propanoic pyridinium salicylic silicic
    succinic sulfamic
    sulfuric sulfurous taps tartaric tes tricine triethanolammonium trimethylammonium tris
  `),
  reagents: list(`
    aces aceticAcid ada ammonia ammoniumAcetate ammoniumChloride ammoniumNitrate ammoniumSulfate
    ascorbicAcid bariumHydroxide bariumHydroxideOctahydrate benzoicAcid bes bicine bisTris borax boricAcid
    calciumChloride calciumChlorideDihydrate calciumHydroxide caps carbonDioxide ches citricAcid
    citricAcidMonohydrate dipotassiumHydrogenPhosphate dipotassiumHydrogenPhosphateTrihydrate
    dipotassiumOxalateMonohydrate disodiumEdtaDihydrate disodiumHydrogenCitrateSesquihydrate
    disodiumHydrogenPhosphate disodiumHydrogenPhosphateDihydrate disodiumHydrogenPhosphateDodecahydrate
    disodiumHydrogenPhosphateHeptahydrate disodiumMalate disodiumSuccinate disodiumSuccinateHexahydrate
    disodiumTartrateDihydrate disodiumTetraborate epps formicAcid glycine glycineHydrochloride hepes
    hydrobromicAcid hydrochloricAcid imidazole lacticAcid lithiumHydroxide lithiumHydroxideMonohydrate
    malicAcid mes mesMonohydrate mops mopso nitricAcid oxalicAcid oxalicAcidDihydrate perchloricAcid
    phosphoricAcid pipes potassiumAcetate potassiumCarbonate potassiumCarbonateSesquihydrate
    potassiumChloride potassiumDihydrogenCitrate potassiumDihydrogenPhosphate potassiumHydrogenCarbonate
    potassiumHydrogenDiiodate potassiumHydrogenPhthalate potassiumHydrogenTartrate potassiumHydroxide
    potassiumSodiumTartrateTetrahydrate potassiumTetroxalateDihydrate sodiumAcetate
    sodiumAcetateTrihydrate sodiumAscorbate sodiumBenzoate sodiumCarbonate sodiumCarbonateDecahydrate
    sodiumCarbonateMonohydrate sodiumChloride sodiumDihydrogenCitrate sodiumDihydrogenPhosphate
    sodiumDihydrogenPhosphateDihydrate sodiumDihydrogenPhosphateMonohydrate sodiumFormate
    sodiumHydrogenCarbonate sodiumHydrogenSulfate sodiumHydroxide sodiumLactate sodiumOxalate
    sodiumSulfate sodiumSulfateDecahydrate succinicAcid sulfamicAcid
    sulfuricAcid taps tartaricAcid tes tricine
    tripotassiumCitrateMonohydrate tripotassiumPhosphate tris trisHydrochloride trisodiumCitrate
    trisodiumCitrateDihydrate trisodiumPhosphate trisodiumPhosphateDodecahydrate
  `),
  indicators: list(`
    alizarinYellowR bromocresolGreen bromocresolPurple bromophenolBlue bromothymolBlue chlorophenolRed
    congoRed cresolRed cresolRedAcid indigoCarmine litmus mCresolPurple methylOrange methylRed
    methylRedBromocresolGreen methylViolet methylYellow neutralRed nitramine oCresolphthalein phenolRed
    phenolphthalein thymolBlue thymolBlueAcid thymolphthalein tropaeolinO
  `),
  colour: [
    'colourDifference',
    'rankBySight',
    'sightDefaults',
    'type SeenDifference',
    'type SightOptions',
    'type SightRanking',
    'type SightScore',
    'type VisibleChange',
    'type Vision',
    'visibleChange',
    'visions',
  ],
  exact: [
    'InputError',
    'NotProvenError',
    'addWater',
    'aliquot',
    'batesGuggenheim',
    'compareWithExact',
    'davies',
    'debyeHuckelExtended',
    'debyeHuckelLimiting',
    'exactDefaults',
    'exactEquilibrium',
    'exactLimits',
    'exactPH',
    'exactTitration',
    'guntelberg',
    'ideal',
    'makeSolution',
    'makeUpTo',
    'mix',
    'type ActivityLaw',
    'type Comparison',
    'type Digits',
    'type ExactCarbonDioxide',
    'type ExactConditions',
    'type ExactEquilibrium',
    'type ExactEquivalencePoint',
    'type ExactIngredient',
    'type ExactPH',
    'type ExactRecipe',
    'type ExactSolution',
    'type ExactSpecies',
    'type ExactTitration',
    'type ExactTitrationSetup',
    'type ExactVolume',
    'type Exactly',
    'type Issue',
    'type IssueCode',
  ],
  measurement: [
    'InputError',
    'calibrateProbe',
    'compareEndpoints',
    'correctReadings',
    'endpointDefaults',
    'findEndpoints',
    'pHFromPotential',
    'probeDefaults',
    'probeDrift',
    'readReadings',
    'readingLimits',
    'settlingError',
    'settlingWait',
    'standardPH',
    'type CalibrationOptions',
    'type CalibrationPoint',
    'type ColumnKind',
    'type CompareEndpointsOptions',
    'type CorrectionOptions',
    'type Endpoint',
    'type EndpointMethod',
    'type EndpointOptions',
    'type EndpointRow',
    'type Endpoints',
    'type Estimate',
    'type Issue',
    'type IssueCode',
    'type LineRead',
    'type ProbeCalibration',
    'type ProbeDrift',
    'type ReadingColumns',
    'type ReadingFinding',
    'type ReadingOptions',
    'type ReadingReport',
    'type ReadingUncertainty',
    'type Readings',
    'type Settling',
    'usualWait',
  ],
};

/** What `export *` takes from a file of a catalogue. */
const constantsIn = (path: string): string[] =>
  [...read(path.replace(/\.js$/, '.ts')).matchAll(/^export const (\w+)/gm)].map(([, name]) => name as string);

/** The names in the export lists of an entry, which is nothing but such lists. */
function exportsOf(path: string): string[] {
  const names: string[] = [];
  for (const statement of ts.createSourceFile(path, read(path), ts.ScriptTarget.ESNext).statements) {
    const clause = ts.isExportDeclaration(statement) ? statement.exportClause : undefined;
    if (!ts.isExportDeclaration(statement)) throw new Error(`${path} holds more than export lists`);
    if (!clause) names.push(...constantsIn(`src/${(statement.moduleSpecifier as ts.StringLiteral).text}`));
    else if (ts.isNamespaceExport(clause)) names.push(clause.name.text);
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
