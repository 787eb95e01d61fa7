import type { Stroke } from './shape.js';

/**
 * What curves are drawn with: colours that people with any kind of colour-vision deficiency tell apart, each with
 * dashes of its own, so that a copy in black and white can be read too.
 *
 * The colours are four of the palette of M. Okabe and K. Ito (2008, from memory), darkened where white paper asks for
 * it, after black and a grey; the tests hold them to a contrast with the paper and to differences between each other.
 *
 * @internal
 */
export const curveInks: readonly Stroke[] = [
  { colour: '#16202c', width: 2 },
  { colour: '#0067a5', width: 2, dash: '9 4' },
  { colour: '#c04a00', width: 2, dash: '2.5 3' },
  { colour: '#00795c', width: 2, dash: '10 3 2 3' },
  { colour: '#a4437a', width: 2, dash: '5 3' },
  { colour: '#6b6f76', width: 2, dash: '14 3 2 3 2 3' },
];

/** Of the k-th curve, from 0; after the last one the first one again. @internal */
export const inkOf = (k: number): Stroke => curveInks[k % curveInks.length] as Stroke;

/** Of text. @internal */
export const ink = '#16202c';
/** Of what is read off, not looked at: ticks, axes, leaders. @internal */
export const paleInk = '#5a636e';
/** Of the lines behind a curve. @internal */
export const gridInk = '#dde2e7';
/** Of an area between two curves. @internal */
export const bandInk = '#cfe3f1';
/** Of a bar: dark enough for a copy in black and white. @internal */
export const barInk = '#3c5a78';
/** Of readings and of the lines to their residuals. @internal */
export const readingInk = '#c04a00';

/** Sizes of type, px. @internal */
export const type = { title: 15, text: 12, tick: 11 } as const;
