// A piece: one thing on a drawn page that an adult makes with one move of the hand.
import type { Bounds, Transform } from '../base/index.ts';
import type { Figure } from '../figures/index.ts';
import type { SceneNode } from '../page/index.ts';

/** Where a piece lies on the page and how it is drawn there; all in mm of the page. */
interface Drawn {
  /** Strokes included; of lines and boxes, the middles of their strokes. */
  readonly bounds: Bounds;
  /** Where `node` is drawn, where `bounds` have been moved since; absent: at `bounds`. */
  readonly from?: Bounds;
  readonly node: SceneNode;
  /** From the coordinates of the node to the page. */
  readonly transform: Transform;
  /** Which task of the sheet it belongs to, from 0; absent: none, such as a line between tasks. */
  readonly task?: number;
  /** What it stands inside, and moves with. */
  readonly rides?: Piece;
  /** Lines are dashed. */
  readonly isDashed: boolean;
}

export type Piece =
  /** A figure, whatever draws it. */
  | (Drawn & {
      readonly kind: 'figure';
      readonly figure: Figure;
      /** What it is called, where that is more than the figure's own name. */
      readonly name?: string;
    })
  /** A square that fills the space between lines. */
  | (Drawn & { readonly kind: 'patch'; readonly figure: Figure })
  /** An upright rectangle with nothing in it of its own. */
  | (Drawn & { readonly kind: 'box' })
  /** A straight line from corner to corner of its bounds; `rises`: from the lower left. */
  | (Drawn & { readonly kind: 'line'; readonly rises: boolean })
  /** A circle that is nothing but a place, or a small dot. */
  | (Drawn & { readonly kind: 'ring' | 'dot' })
  /** Something else that has a name. */
  | (Drawn & { readonly kind: 'named'; readonly name: string })
  /** What no hand draws freely from words: curves, outlines laid over one another. */
  | (Drawn & { readonly kind: 'free' });

export type Standing = Exclude<Piece, { readonly kind: 'patch' | 'box' | 'line' | 'free' }>;

/** Whether the piece is one that stands on a point: its middle. */
export function isStanding(piece: Piece): piece is Standing {
  return !['patch', 'box', 'line', 'free'].includes(piece.kind);
}
