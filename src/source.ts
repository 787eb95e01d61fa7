import type { Work } from './bibliography.js';
import { at, type Faults } from './input/faults.js';

/**
 * Where a datum comes from. The datum says only where in a work it stands; `bibliography.ts` holds each work once.
 */
export type Source = PublishedSource | CommonPractice | FromMemory;

/** A value printed in a work. */
export interface PublishedSource {
  readonly kind: 'published';
  readonly work: Work;
  /** Table, page, equation or entry. */
  readonly where: string;
  /** The page in which it was read, and what stands there, where that is not the work itself. */
  readonly checked?: string;
}

/** A rule of thumb of the trade, without a work to cite. */
export interface CommonPractice {
  readonly kind: 'commonPractice';
  readonly note: string;
}

/** A value quoted from memory of a work: it waits for someone with the page. A test lists these. */
export interface FromMemory {
  readonly kind: 'fromMemory';
  readonly work?: Work;
  readonly note: string;
}

const keysOf: Readonly<Record<Source['kind'], readonly string[]>> = {
  published: ['kind', 'work', 'where', 'checked'],
  commonPractice: ['kind', 'note'],
  fromMemory: ['kind', 'work', 'note'],
};

/** The longest note, in characters. @internal */
export const noteLength = 1000;

/** Reads a source from a caller's value, noting every fault. @internal */
export function readSource(value: unknown, path: string, faults: Faults): Source {
  const before = faults.count;
  const unread = faults.object(value, path, 'a source, such as { kind: "published", work, where }');
  if (faults.count > before) return unknownSource;
  const { kind } = unread;
  if (kind !== 'published' && kind !== 'commonPractice' && kind !== 'fromMemory') {
    const code = kind === undefined ? 'missing' : 'wrong-type';
    faults.add(code, at(path, 'kind'), "'published', 'commonPractice' or 'fromMemory'", kind);
    return unknownSource;
  }
  const source = faults.object(unread, path, 'a source', keysOf[kind]);
  if (kind === 'published')
    faults.text(source.where, at(path, 'where'), 'the table, page or equation', noteLength);
  else faults.text(source.note, at(path, 'note'), 'a note', noteLength);
  if (kind === 'published' || source.work !== undefined) faults.text(source.work, at(path, 'work'), 'a work');
  if (source.checked !== undefined) faults.text(source.checked, at(path, 'checked'), 'a note', noteLength);
  return source as unknown as Source;
}

/** Takes the place of a source that could not be read, until the faults are thrown. */
const unknownSource: Source = { kind: 'commonPractice', note: '?' };
