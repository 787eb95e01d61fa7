import { cautionsOf, colourAt, indicatorDefaults, overshoot, rankIndicators, sourcesOf } from 'protolysis';

/** Drops past the call that the page shows. */
const drops = 3;

/**
 * Everything that the page shows beside the picture.
 *
 * @param {import('./ask.mjs').Asked} asked
 */
export function predict({ titration, indicator }) {
  return {
    points: titration.equivalencePoints,
    stop: indicator && stopAt(titration, indicator),
    cautions: cautionsOf(indicator ? [titration, indicator] : titration),
    notes: titration.notes,
    citations: sourcesOf(indicator ? [titration, indicator] : titration).map(({ citation }) => citation),
  };
}

/**
 * Where an indicator is called, at the point that it serves best, and what the drops after that cost.
 *
 * @param {import('protolysis').Titration} titration
 * @param {import('protolysis').Indicator} indicator
 */
function stopAt(titration, indicator) {
  const options = { include: [indicator.id] }; // it was chosen by name, for use or not
  const { ranking, notes } = rankIndicators(titration, [indicator], options);
  const [score] = ranking;
  return {
    name: indicator.name,
    first: colourAt(indicator, titration.pHAt(0)),
    score: score ?? null,
    rows: score ? overshoot(titration, indicator, { at: score.at, drops }) : [],
    dropSize: indicatorDefaults.dropSize,
    notes,
  };
}

/** @typedef {ReturnType<typeof predict>} Prediction */
/** @typedef {ReturnType<typeof stopAt>} Stop */
