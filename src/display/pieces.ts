import type { Faults } from '../input/faults.js';
import type { Unread } from '../input/safe-read.js';
import type { ShownPart } from './part.js';

/** A part that has been read, or what makes parts once all that was read is known to be sound. */
export type Piece = ShownPart | (() => readonly ShownPart[]);

/** Reads what is shown of a result of one kind, noting every fault. */
export type Pieces = (fields: Unread, faults: Faults) => readonly Piece[];

/** A text. @internal */
export const textAt = (fields: Unread, key: string, path: string, faults: Faults): string =>
  faults.text(fields[key], `${path}.${key}`, 'a text', mostOfText);

/** A number, or null where there is none. @internal */
export const numberOrNull = (fields: Unread, key: string, path: string, faults: Faults): number | null =>
  fields[key] === undefined || fields[key] === null
    ? null
    : faults.number(fields[key], `${path}.${key}`, 'a number or null');

/** The items of a list, each an object; `path` is that of the list. @internal */
export const objectsAt = (value: unknown, path: string, faults: Faults): readonly Unread[] =>
  faults
    .list(value, path, 'a list of results', 0, mostItems)
    .map((one, k) => faults.object(one, `${path}[${k}]`, 'a part of a result'));

/** A list of texts. @internal */
export const textsAt = (fields: Unread, key: string, faults: Faults): readonly string[] =>
  faults
    .list(fields[key], `result.${key}`, 'a list of texts', 0, mostItems)
    .map((one, k) => faults.text(one, `result.${key}[${k}]`, 'a text', mostOfText));

/** Notes, as most results have them. @internal */
export const notesOf = (fields: Unread, faults: Faults): ShownPart => ({
  kind: 'list',
  items: fields.notes === undefined ? [] : textsAt(fields, 'notes', faults),
});

/** More than any result holds. */
const mostItems = 10_000;
const mostOfText = 100_000;
