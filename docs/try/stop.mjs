import { colourLabel, htmlOf } from 'protolysis';
import { listOf, make } from './elements.mjs';

/**
 * What to watch for with an indicator, and what it costs to go on.
 *
 * @param {import('./predict.mjs').Stop} stop
 */
export function partsOfStop({ name, first, score, rows, dropSize, notes }) {
  const [call, next] = rows;
  const reasons = [...(score ? [`Verdict: ${score.verdict}. ${score.reason}`] : []), ...notes];
  if (!call || !next)
    return [
      make('p', `The curve does not get to a change of ${name}: there is no colour to stop at.`),
      listOf(reasons),
    ];
  return [
    swatches([
      ['at first', first],
      ['stop', call.colour],
      ['a drop too many', next.colour],
    ]),
    make('p', `Stop at ${call.colour.name}, at ${call.mL.toFixed(2)} mL: ${offPoint(call)}.`),
    make(
      'p',
      `One drop too many, ${dropSize} mL, moves the result by ${costOf(call, next)} %: ${offPoint(next)}.`,
    ),
    tableOf(rows),
    listOf(reasons),
    hint(`Colours are ${colourLabel}.`),
  ];
}

/** @param {readonly import('protolysis').OvershootDrop[]} rows */
function tableOf(rows) {
  const place = make('div');
  place.innerHTML = htmlOf(
    rows,
    {
      drop: { as: 0, heading: 'drops' },
      mL: 2,
      pH: 2,
      'error.percent': { as: 2, heading: 'off, %' },
      'colour.name': { as: 'text', heading: 'flask' },
    },
    { caption: 'Drop by drop after the colour to stop at' },
  );
  return place;
}

/** @param {readonly (readonly [string, import('protolysis').Colour])[]} colours */
function swatches(colours) {
  const list = make(
    'ul',
    ...colours.map(([when, { hex, name }]) => {
      const patch = make('span');
      patch.className = 'patch';
      patch.style.background = hex;
      return make('li', patch, make('b', when), ` ${name}`);
    }),
  );
  list.className = 'swatches';
  return list;
}

/** @param {string} words */
function hint(words) {
  const paragraph = make('p', words);
  paragraph.className = 'hint';
  return paragraph;
}

/** @param {import('protolysis').OvershootDrop} drop */
function offPoint({ error }) {
  const percent = Math.abs(error.percent).toFixed(2);
  if (Number(percent) === 0) return 'on the equivalence point, to 0.01 %';
  return `${percent} % ${error.percent < 0 ? 'before' : 'past'} the equivalence point`;
}

/** @param {import('protolysis').OvershootDrop} call @param {import('protolysis').OvershootDrop} next */
const costOf = (call, next) => Math.abs(next.error.percent - call.error.percent).toFixed(2);
