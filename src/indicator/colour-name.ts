/**
 * A plain name for a screen colour, for those who hear it or cannot tell it: `yellow`, `pale green`, `faint pink`, …
 *
 *   hue, saturation = (max − min)/max and value = max of the three channels                             (1)
 *
 * The boundaries between names are ours. Grey is what is neither light nor coloured.
 *
 * @param hex - six digits after `#`
 * @internal
 */
export function colourName(hex: string): string {
  const [red, green, blue] = [1, 3, 5].map((k) => Number.parseInt(hex.slice(k, k + 2), 16) / 255) as [
    number,
    number,
    number,
  ];
  const value = Math.max(red, green, blue);
  const spread = value - Math.min(red, green, blue);
  const saturation = value === 0 ? 0 : spread / value;
  if (saturation < visible) return value > 0.85 ? 'colourless' : value > 0.25 ? 'grey' : 'black';

  const sector =
    value === red
      ? (green - blue) / spread
      : value === green
        ? 2 + (blue - red) / spread
        : 4 + (red - green) / spread;
  const hue = (60 * sector + 360) % 360;
  const name = names.find(({ below }) => hue < below)?.name ?? 'red';
  if (saturation < 0.12) return value > 0.7 ? `faint ${name}` : 'grey';
  if (saturation < 0.3) return value > 0.7 ? `pale ${name}` : `greyish ${name}`;
  return value < 0.55 ? `dark ${name}` : name;
}

/** A saturation below this counts as colourless: two or three just noticeable differences on white. */
const visible = 0.03;

/** The greatest hue of each name, in degrees; hues above them all are red. */
const names = [
  { below: 16, name: 'red' },
  { below: 42, name: 'orange' },
  { below: 68, name: 'yellow' },
  { below: 90, name: 'yellow-green' },
  { below: 160, name: 'green' },
  { below: 188, name: 'blue-green' },
  { below: 246, name: 'blue' },
  { below: 275, name: 'violet' },
  { below: 298, name: 'purple' },
  { below: 346, name: 'pink' },
] as const;
