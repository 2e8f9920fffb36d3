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
    <Fragment key={place}>
      {typeof piece === 'string' ? (
        afterControl(pieces, place) ? (
          piece.replace(MARK, '')
        ) : (
          piece
        )
      ) : (
        <span className="with-mark">
          {controls[piece.control]}
          {markBehind(pieces, place)}
        </span>
      )}
    </Fragment>
  ));
}

/** A comma or full stop never begins a line: it stays with the control before it. */
const MARK = /^[,.،।]/;

function afterControl(pieces: readonly Piece<string>[], place: number): boolean {
  return typeof pieces[place - 1] === 'object';
}

function markBehind(pieces: readonly Piece<string>[], place: number): string {
  const next = pieces[place + 1];
  return typeof next === 'string' ? (MARK.exec(next)?.[0] ?? '') : '';
}
