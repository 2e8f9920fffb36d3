// A sentence with its controls, as a language orders them.
import { Fragment, type ReactNode } from 'react';
import type { Piece } from './pieces.ts';

interface PiecesProps<C extends string> {
  readonly pieces: readonly Piece<C>[];
  readonly controls: Readonly<Partial<Record<C, ReactNode>>>;
}

export function Pieces<C extends string>({ pieces, controls }: PiecesProps<C>) {
  return pieces.map((piece, place) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: the pieces never change places
    <Fragment key={place}>{typeof piece === 'string' ? piece : controls[piece.control]}</Fragment>
  ));
}
