import {
  chooseIndicators,
  colourAt,
  flaskColours,
  indicatorLimits,
  indicators,
  makeSolution,
  overshoot,
  type Reagent,
  rankIndicators,
  reagents,
  referenceTubes,
  scoreIndicator,
  type Titration,
  titrationLimits,
} from 'protolysis';
import { colourDifference, rankBySight } from 'protolysis/colour';
import { describe, expect, test } from 'vitest';
import { listed } from '../faults-of.js';
import { straight, strong, titrationOf } from './titrations.js';

const { methylRed, phenolphthalein } = indicators;
const titration = strong();
const [point] = straight.equivalencePoints;
const stockOf = (reagent: Reagent) => makeSolution({ contents: [{ reagent, molar: 0.1 }] });
const [acid, base] = [stockOf(reagents.hydrochloricAcid), stockOf(reagents.sodiumHydroxide)];

const score = (options: unknown) => scoreIndicator(straight, methylRed, options as never);
const observed = (more: object) => score({ observer: { at: 7, within: 1, ...more } });
const judgedAt = (more: object) => score({ at: { ...point, ...more } });
const flask = (more: object) => flaskColours({ mL: [0], pH: [7], ...more }, methylRed);
const tubes = (more: object) => referenceTubes(methylRed, { mL: 5, drops: 2, acid, base, ...more });
const after = (more: object) => overshoot(straight, methylRed, { drops: 0, ...more });
const bySight = (more: object) => rankBySight(straight, [methylRed], more);
/** A titration with other members; phenolphthalein is called where its range begins. */
const own = (more: object) => scoreIndicator({ ...straight, ...more } as Titration, phenolphthalein);
const [lowest, highest] = indicatorLimits.pH;

/** A call, what is one too far, and its path; then what is just allowed. */
const limits: readonly [string, (more: object) => unknown, object, string, object][] = [
  ['observer', observed, { at: lowest - 0.1 }, 'observer.at', { at: lowest }],
  ['observer', observed, { at: highest + 0.1 }, 'observer.at', { at: highest }],
  ['observer', observed, { within: 0.0009 }, 'observer.within', { within: 0.001 }],
  ['observer', observed, { within: 3.1 }, 'observer.within', { within: 3 }],
  ['options', score, { tolerance: 9e-7 }, 'tolerance', { tolerance: 1e-6 }],
  ['options', score, { tolerance: 1.1e6 }, 'tolerance', { tolerance: 1e6 }],
  ['options', score, { dropSize: 9e-7 }, 'dropSize', { dropSize: 1e-6 }],
  ['options', score, { dropSize: 1.1e6 }, 'dropSize', { dropSize: 1e6 }],
  ['options', score, { indicatorDrops: 0.019 }, 'indicatorDrops', { indicatorDrops: 0.02 }],
  ['options', score, { indicatorDrops: 201 }, 'indicatorDrops', { indicatorDrops: 200 }],
  ['point', judgedAt, { mL: 0 }, 'at.mL', { mL: titrationLimits.leastML }],
  ['flaskColours', flask, { mL: [-1] }, 'curve.mL[0]', { mL: [0] }],
  ['flaskColours', flask, { mL: [1.1e9] }, 'curve.mL[0]', { mL: [1e9] }],
  ['flaskColours', flask, { pH: [-10.1] }, 'curve.pH[0]', { pH: [-10] }],
  ['flaskColours', flask, { pH: [30.1] }, 'curve.pH[0]', { pH: [30] }],
  ['referenceTubes', tubes, { mL: 0 }, 'mL', { mL: 1e-3 }],
  ['referenceTubes', tubes, { mL: 1.1e6 }, 'mL', { mL: 1e6 }],
  ['referenceTubes', tubes, { drops: 0 }, 'drops', { drops: 0.1 }],
  ['referenceTubes', tubes, { drops: 10_001 }, 'drops', { drops: 10_000 }],
  ['referenceTubes', tubes, { dropSize: 0 }, 'dropSize', { dropSize: 1e-3 }],
  ['referenceTubes', tubes, { dropSize: 10.1 }, 'dropSize', { dropSize: 10 }],
  ['overshoot', after, { drops: -1 }, 'drops', { drops: 0 }],
  ['overshoot', after, { drops: 1.5 }, 'drops', { drops: 1 }],
  ['overshoot', after, { drops: 10_001 }, 'drops', { drops: 2 }],
  ['rankBySight', bySight, { noticeable: 0.009 }, 'noticeable', { noticeable: 0.01 }],
  ['rankBySight', bySight, { noticeable: 101 }, 'noticeable', { noticeable: 100 }],
];

describe('numbers go as far as their limits', () => {
  test.each(limits)('%s, %#', (_, call, beyond, path, allowed) => {
    expect(listed(() => call(beyond))).toEqual([`out-of-range ${path}`]);
    expect(listed(() => call(allowed))).toEqual([]);
  });

  test('drops of an indicator, where a colour is asked', () => {
    const colour = (options: object) => listed(() => colourAt(methylRed, 7, options));
    const colours = (options: object) => listed(() => flaskColours({ mL: [0], pH: [7] }, methylRed, options));
    for (const call of [colour, colours]) {
      expect(call({ drops: 0.019 })).toEqual(['out-of-range drops']);
      expect(call({ drops: 201 })).toEqual(['out-of-range drops']);
      expect(call({ drops: 200 })).toEqual([]);
      expect(call({ drop: 2 })).toEqual(['unknown-key options.drop']);
    }
  });
});

describe('an observer', () => {
  const weight = (value: unknown) => listed(() => observed({ weight: () => value }));

  test('weighs from 0 to 1e100', () => {
    const at7 = (fault: string) => [expect.stringMatching(new RegExp(`^${fault} observer\\.weight\\(`))];
    expect(weight(-1)).toEqual(at7('out-of-range'));
    expect(weight(1.1e100)).toEqual(at7('out-of-range'));
    expect(weight(undefined)).toEqual(at7('missing'));
    expect(weight('1')).toEqual(at7('wrong-type'));
    expect(weight(1e100)).toEqual([]);
    expect(weight(0)).toEqual(['out-of-range observer.weight']);
  });

  test('has a weight that is a function', () =>
    expect(listed(() => observed({ weight: 1 }))).toEqual(['wrong-type observer.weight']));

  test('is not asked for a weight where another fault is known', () => {
    const asked: number[] = [];
    const observer = {
      at: 7,
      within: 1,
      weight: (pH: number) => asked.push(pH),
    };
    expect(listed(() => score({ tolerance: -1, observer }))).toEqual(['out-of-range tolerance']);
    expect(asked).toEqual([]);
  });
});

describe('a titration', () => {
  const members = ['equivalencePoints', 'pHAt', 'slopeAt', 'volumesAt'];

  test('that is none of ours lacks each of its members', () =>
    expect(listed(() => scoreIndicator({} as never, methylRed))).toEqual(
      members.map((key) => `missing titration.${key}`),
    ));

  test.each(['pHAt', 'slopeAt', 'volumesAt'])('has the method %s', (key) => {
    expect(listed(() => own({ [key]: undefined }))).toEqual([`missing titration.${key}`]);
    expect(listed(() => own({ [key]: 7 }))).toEqual([`wrong-type titration.${key}`]);
  });

  test.each([
    ['a setup', titration.setup, 'give titrate(setup)'],
    ['a solution', acid, 'give a titration as titrate returns it'],
    ['its copy', JSON.parse(JSON.stringify(titration)), 'give titrate(titration.setup)'],
  ])('is not %s, which is one fault', (_, other, advice) => {
    const call = () => scoreIndicator(other as never, methylRed);
    expect(listed(call)).toEqual(['wrong-type titration']);
    expect(call).toThrow(advice);
  });

  test('answers with volumes from 0 to 1e9 mL', () => {
    const path = 'titration.volumesAt(8.2)[0]';
    const found = (mL: number) => listed(() => own({ volumesAt: (pH: number) => (pH === 8.2 ? [mL] : []) }));
    expect(found(-1)).toEqual([`out-of-range ${path}`]);
    expect(found(1.1e9)).toEqual([`out-of-range ${path}`]);
    expect(found(1e9)).toEqual([]);
  });

  test('that throws is told the answer it owes, under the name of its method', () => {
    const call = () =>
      own({
        pHAt: () => {
          throw new Error('out of paper');
        },
      });
    expect(listed(call)).toEqual(['wrong-type titration.pHAt(7)']);
    expect(call).toThrow(
      /^titration\.pHAt: titration\.pHAt\(7\) is 'out of paper'; give an answer instead of an error/,
    );
  });

  test('need not have notes, where it has a point', () =>
    expect(listed(() => own({ notes: 'none' }))).toEqual([]));

  test('passes on a fault that it finds itself', () =>
    expect(listed(() => own({ pHAt: () => titration.pHAt(-1) }))).toEqual(['out-of-range mL']));
});

describe('a point', () => {
  const inflected = (more: object) =>
    listed(() => judgedAt({ inflection: { mL: 7, pH: 7, slope: 1, ...more } }));

  test('has an inflection of one of two kinds, or none', () => {
    expect(inflected({})).toEqual(['missing at.inflection.kind']);
    expect(inflected({ kind: 'steep' })).toEqual(['wrong-type at.inflection.kind']);
    expect(inflected({ kind: 'steepest' })).toEqual([]);
    expect(inflected({ kind: 'flattest' })).toEqual([]);
    expect(listed(() => judgedAt({ inflection: null }))).toEqual([]);
    expect(listed(() => judgedAt({ inflection: undefined }))).toEqual(['missing at.inflection']);
  });

  test('is not named to a set, which serves them all', () =>
    expect(listed(() => chooseIndicators(straight, [methylRed], { at: point } as never))).toEqual([
      'unknown-key at',
    ]));

  test('is needed', () => {
    const none = titrationOf(reagents.hydrochloricAcid, reagents.nitricAcid);
    expect(listed(() => overshoot(none, methylRed))).toEqual(['missing titration.equivalencePoints']);
  });
});

describe('an indicator', () => {
  const { acidColour, bands: _, ...colourless } = phenolphthalein;
  const faultsOf = (indicator: object) => listed(() => colourAt(indicator as never, 7));

  test('without a colour is one fault', () => {
    expect(acidColour).toBe('colourless');
    expect(faultsOf(colourless)).toEqual(['missing indicator.acidColour']);
  });

  test('of a colour without a name that is known is missing its bands', () => {
    const { bands, ...unspecified } = phenolphthalein;
    expect(bands?.acid).toEqual([]);
    expect(faultsOf({ ...unspecified, baseColour: 'mauve' })).toEqual(['missing indicator.baseColour']);
  });

  test('to include is of the list, which is looked up once the list is without faults', () => {
    const ranked = (id: string, include: unknown[]) =>
      listed(() =>
        rankIndicators(straight, [{ ...methylRed, id }], {
          include: include as string[],
        }),
      );
    expect(ranked('methylRed', ['methylRed', 'litmus'])).toEqual(['unknown-substance include[1]']);
    expect(ranked('', ['methylRed'])).toEqual(['out-of-range indicators[0].id']);
    expect(ranked('methylRed', [5])).toEqual(['wrong-type include[0]']);
  });
});

describe('options', () => {
  test('are an object, with the keys of their call alone', () => {
    const keys = 'at, tolerance, dropSize, observer, indicatorDrops';
    expect(() => score(5)).toThrow(`give options { ${keys} }.`);
    expect(() => rankIndicators(titration, [methylRed], 5 as never)).toThrow(`{ ${keys}, include }`);
  });

  test('name a kind of vision', () => {
    expect(listed(() => bySight({ vision: 'tetrachromacy' }))).toEqual(['wrong-type vision']);
    expect(listed(() => bySight({ vision: 'tritanopia' }))).toEqual([]);
  });
});

test('a colour is # and six digits, in either case', () => {
  const colours = (first: unknown, second: unknown) =>
    listed(() => colourDifference(first as string, second as string));
  expect(colours('#a1b2c3', '#A1B2C3')).toEqual([]);
  expect(colours(undefined, 7)).toEqual(['missing first', 'wrong-type second']);
  expect(colours('red', '#fff')).toEqual(['out-of-range first', 'out-of-range second']);
  expect(colours('##a1b2c3', '#a1b2c34')).toEqual(['out-of-range first', 'out-of-range second']);
});
