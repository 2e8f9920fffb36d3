// The name of a file in what is said of it: it is broken only where it is longer than a line, not at each of its hyphens.

import type { Piece } from '../speaking/pieces.ts';
import { Pieces } from '../speaking/pieces-shown.tsx';

export interface FileSaidProps {
  /** The sentence, with a place for the name. */
  readonly pieces: readonly Piece<'file'>[];
  readonly name: string;
}

export function FileSaid({ pieces, name }: FileSaidProps) {
  return <Pieces pieces={pieces} controls={{ file: <bdi className="file-name">{name}</bdi> }} />;
}
