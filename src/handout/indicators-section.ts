import type { Dye } from '../indicator/colour-at.js';
import type { IndicatorScore } from '../indicator/indicator-score.js';
import { type OvershootDrop, overshoot } from '../indicator/overshoot.js';
import type { IndicatorSet } from '../indicator/ranking.js';
import { indicatorDefaults } from '../indicator/score-options.js';
import { verdictScores } from '../indicator/verdict.js';
import { say } from '../plot/words.js';
import { fixed } from '../print-number.js';
import { colourless } from '../substance/indicator.js';
import type { Titration } from '../titration/titration.js';
import type { Answers } from './answers.js';
import type { ReadHandout } from './handout-options.js';
import { list, type Markup, paragraph, section } from './markup.js';
import type { HandoutWords } from './words.js';

/** Which indicator, and what colour to stop at; what it costs to go on is for the instructor. @internal */
export function indicatorsSection(
  titration: Titration,
  chosen: IndicatorSet,
  { dyes, words }: ReadHandout,
  answers: Answers | null,
): Markup {
  const scores = chosen.points.flatMap(({ ranking }) => ranking);
  const calls = dyes
    .flatMap(({ indicator }) => scores.filter((score) => score.indicator.id === indicator.id))
    .map((score) => ({ score, drops: dropsOf(titration, score, dyes) }));
  return section(words.indicatorsHeading, [
    list(calls.map((call) => instruction(call, words))),
    ...(answers || calls.length === 0 ? [] : [paragraph(words.oneTooMany)]),
    ...(answers ? expected(calls, chosen, words) : []),
  ]);
}

interface Call {
  readonly score: IndicatorScore;
  /** The call itself and one drop more; none where the curve never gets there. */
  readonly drops: readonly OvershootDrop[];
}

const dropsOf = (titration: Titration, { indicator, at }: IndicatorScore, dyes: readonly Dye[]) => {
  const dye = dyes.find((one) => one.indicator.id === indicator.id);
  return dye ? overshoot(titration, dye.indicator, { at, drops: 1 }) : [];
};

function instruction({ score, drops: [call] }: Call, words: HandoutWords): string {
  const { name, acidColour, baseColour } = score.indicator;
  const [from, to] = score.at.slope < 0 ? [baseColour, acidColour] : [acidColour, baseColour];
  const said = { indicator: name, drops: indicatorDefaults.indicatorDrops, from, to };
  if (score.verdict === 'unsuitable') return say(words.unsuitable, said);
  if (!call) return say(words.watch, said);
  const stop = say(to === colourless ? words.stopFading : words.stopAt, { ...said, stop: call.colour.name });
  return call.colour.name === to ? stop : `${stop} ${say(words.tooFar, said)}`;
}

function expected(
  calls: readonly Call[],
  { points, leftOut, notes }: IndicatorSet,
  words: HandoutWords,
): Markup[] {
  const flat = points
    .filter(({ best }) => best < verdictScores['well suited'])
    .map(({ at }) => say(words.flat, { mL: fixed(at.mL, 2) }));
  const remarks = points.length === 0 ? notes : flat;
  return [
    list(
      calls.map((call) => expectedCall(call, words)),
      'ul',
      'answer',
    ),
    list([...leftOut.map(({ name, reason }) => `${name}: ${reason}`), ...remarks], 'ul', 'answer'),
  ];
}

function expectedCall({ score, drops: [call, next] }: Call, words: HandoutWords): string {
  const said = { indicator: score.indicator.name, verdict: score.verdict, point: fixed(score.at.mL, 2) };
  if (!call || !next) return say(words.neverCalled, said);
  return say(words.expectedCall, {
    ...said,
    call: fixed(call.mL, 2),
    error: signed(call.error.percent),
    drop: signed(next.error.percent - call.error.percent),
    colour: next.colour.name,
  });
}

/** Two decimals with a sign, as print has it. */
const signed = (value: number): string => {
  const digits = fixed(value, 2);
  return digits.startsWith('-') ? `−${digits.slice(1)}` : `+${digits}`;
};
