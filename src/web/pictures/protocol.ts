// What the screen asks the worker that simplifies pictures.
import type { OwnPicture } from '../../figures/index.ts';
import type { Simplified, SimplifyWishes } from './simplify.ts';

export interface PictureTalk {
  readonly simplify: {
    readonly ask: { readonly pixels: Uint8ClampedArray; readonly wishes: SimplifyWishes };
    readonly reply: SimplifyReply;
  };
}

export interface Proposal {
  readonly picture: OwnPicture;
  readonly id: string;
  readonly groundStays: boolean;
  /** Names of pictures that are too alike to stand beside it where they must be told apart. */
  readonly alike: readonly string[];
}

export type SimplifyReply =
  | { readonly ok: true; readonly value: Proposal }
  | {
      readonly ok: false;
      readonly fault: Extract<Simplified, { fault: unknown }>['fault'] | 'no-worker';
    };
