import type { Faults } from '../input/faults.js';
import { fieldsOf } from '../input/safe-read.js';
import { readLongTable } from '../output/read-long-table.js';
import { budgetPieces, diagnosisPieces, fitPieces } from './measured-pieces.js';
import type { ShownPart } from './part.js';
import type { Piece, Pieces } from './pieces.js';
import { equilibriumPieces, impossiblePieces, recipePieces, solutionPieces } from './solution-pieces.js';
import { picturePieces, rankingPieces, setPieces, titrationPieces } from './titration-pieces.js';

/** What tells the kinds of result apart: the first of which a result has all keys is its kind. */
const kinds: readonly { readonly keys: readonly string[]; readonly pieces: Pieces }[] = [
  { keys: ['svg'], pieces: picturePieces },
  { keys: ['contributions', 'coverageFactor'], pieces: budgetPieces },
  { keys: ['parameters', 'fitted'], pieces: fitPieces },
  { keys: ['setup'], pieces: titrationPieces },
  { keys: ['ranking', 'leftOut'], pieces: rankingPieces },
  { keys: ['points', 'leftOut'], pieces: setPieces },
  { keys: ['species', 'pH'], pieces: equilibriumPieces },
  { keys: ['parts', 'steps'], pieces: recipePieces },
  { keys: ['because', 'reason'], pieces: impossiblePieces },
  { keys: ['explanations'], pieces: diagnosisPieces },
  { keys: ['contents', 'mL'], pieces: solutionPieces },
];

/** What is shown of a result, in the order of reading; of what is no result of a kind known here, a table. @internal */
export function partsShown(result: unknown, faults: Faults): readonly ShownPart[] {
  const fields = fieldsOf(result) ?? {};
  const kind = kinds.find(({ keys }) => keys.every((key) => Object.hasOwn(fields, key)));
  const pieces: readonly Piece[] = kind
    ? kind.pieces(fields, faults)
    : [{ kind: 'table', rows: result as object }];
  for (const piece of pieces)
    if (typeof piece !== 'function' && piece.kind === 'table') readLongTable(piece.rows, undefined, faults);
  faults.done();
  return pieces.flatMap((piece) => (typeof piece === 'function' ? piece() : [piece])).filter(saysSomething);
}

function saysSomething(part: ShownPart): boolean {
  if (part.kind === 'list') return part.items.length > 0;
  return part.kind !== 'table' || !Array.isArray(part.rows) || part.rows.length > 0;
}
