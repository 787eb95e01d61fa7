import type { DrawnPanel } from './drawn-panel.js';
import { ink, paleInk, readingInk, type } from './inks.js';
import { type Label, lineHeight, type PlacedLabel } from './label.js';
import type { Shape, Spot } from './shape.js';

/**
 * First the marks with a rule, whose texts belong to one place and matter most; then the names of curves, which may
 * stand anywhere along them; then the rest.
 *
 * @internal
 */
export function labelsOf({ marks, lines, dots, areas }: DrawnPanel): Label[] {
  const ofMarks = (withRule: boolean) => marks.filter(({ hasRule }) => hasRule === withRule).map(labelOfMark);
  return [
    ...ofMarks(true),
    ...lines.flatMap(({ name, spots, anchors, stroke }) => nameAlong(name, anchors, stroke.colour, spots)),
    ...ofMarks(false),
    ...dots.flatMap(({ name, spots, isReading }) => nameAlong(name, spots, isReading ? readingInk : ink)),
    ...areas.flatMap(({ name, upper }) => nameAlong(name, upper, paleInk)),
  ];
}

const labelOfMark = ({ at, lines, short }: DrawnPanel['marks'][number]): Label => ({
  anchors: [at],
  lines,
  short,
  size: type.tick,
  colour: ink,
  inWords: lines.join(', '),
});

function nameAlong(name: string, spots: readonly Spot[], colour: string, home?: readonly Spot[]): Label[] {
  if (name === '') return [];
  const label = { anchors: someOf(spots), lines: [name], size: type.text, colour, inWords: name };
  return [home ? { ...label, home } : label];
}

/** Up to twenty places along a path, evenly by its points' order and at least 12 px apart, the last ones first. */
function someOf(path: readonly Spot[]): Spot[] {
  const apart: Spot[] = [];
  for (const spot of path) {
    const last = apart.at(-1);
    if (!last || Math.hypot(spot.x - last.x, spot.y - last.y) >= 12) apart.push(spot);
  }
  const every = Math.ceil(apart.length / 20);
  return apart.reverse().filter((_, k) => k % every === 0);
}

/** A placed label: its lines set against its anchor, and the leader where it stands further off. @internal */
export function labelShapes({ label, box, anchor, leader }: PlacedLabel): Shape[] {
  const side = anchor.x > box.right ? 'end' : anchor.x < box.left ? 'start' : 'middle';
  const x = side === 'end' ? box.right : side === 'start' ? box.left : (box.left + box.right) / 2;
  const texts = label.lines.map(
    (text, k): Shape => ({
      kind: 'text',
      x,
      y: box.top + (k * lineHeight + 1) * label.size,
      text,
      anchor: side,
      hasHalo: true,
      size: label.size,
      colour: label.colour,
    }),
  );
  if (!leader) return texts;
  return [
    { kind: 'line', from: leader[0], to: leader[1], stroke: { colour: paleInk, width: 0.8 } },
    ...texts,
  ];
}
