import type { Readings } from './readings.js';

/** What became of one line of what was typed or pasted. */
export interface LineRead {
  /** From 1; of columns, the row. */
  readonly line: number;
  /** A line above the heading is a comment. */
  readonly as: 'reading' | 'heading' | 'blank' | 'comment' | 'faulty' | 'dropped';
  /** Why it is no reading; empty where there is nothing to say. */
  readonly reason: string;
}

/** Something that looks wrong in what was read. */
export interface ReadingFinding {
  readonly code:
    | 'faulty-lines' //      lines that are no reading
    | 'unclear-commas' //    commas between the columns and in the numbers
    | 'mixed-decimals' //    decimal points and decimal commas in one text
    | 'unknown-headings' //  headings that name no volume or no pH
    | 'other-unit' //        a heading that gives volumes in another unit than mL
    | 'unused-columns' //    cells without a heading, or a second column of one kind, that were not read
    | 'burette-as-totals' // a heading that names a burette, not at zero, where totals are read
    | 'swapped-columns' //   pH where the volume should be
    | 'increments' //        what was added each time, where totals should be
    | 'falling' //           a burette or clock that runs backwards
    | 'repeated-lines' //    the same volume and pH twice
    | 'repeated-volumes' //  the same volume with another pH
    | 'missing-lines' //     a step as long as several, between steps of one length
    | 'too-few'; //          fewer than three readings
  /** The lines concerned, from 1. */
  readonly lines: readonly number[];
  /** What is wrong and what to do. */
  readonly words: string;
}

/** What `readReadings` made of its input. Plain data: it survives JSON. */
export interface ReadingReport {
  /** `clean`: nothing found; `doubtful`: see `findings`; `nothing`: no line is a reading. */
  readonly status: 'clean' | 'doubtful' | 'nothing';
  readonly readings: Readings;
  /** Every line of the input, in order. */
  readonly lines: readonly LineRead[];
  /** What looks wrong, after repair where that was asked for. */
  readonly findings: readonly ReadingFinding[];
  /** What a repair changed; empty without one. */
  readonly changes: readonly string[];
}

/** A finding, as `readReadings` makes it. @internal */
export const finding = (
  code: ReadingFinding['code'],
  lines: readonly number[],
  words: string,
): ReadingFinding => ({
  code,
  lines,
  words,
});
