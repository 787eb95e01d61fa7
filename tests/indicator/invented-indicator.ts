import { defineIndicator, type Indicator } from 'protolysis';

export const source = { kind: 'commonPractice', note: 'invented for a test' } as const;

/** An indicator that changes between two pH. */
export const indicatorOf = (from: number, to: number, more: Partial<Indicator> = {}): Indicator =>
  defineIndicator({
    id: 'x',
    name: 'X',
    transition: { from, to },
    acidColour: 'red',
    baseColour: 'yellow',
    source,
    ...more,
  });
