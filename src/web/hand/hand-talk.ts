// What the screen asks the maker while a sheet is changed by hand, and what comes back.
import type {
  Deed,
  Editable,
  Handwork,
  Problem,
  ShapeChange,
  Spot,
  Verdict,
} from '../../editing/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { Reply } from '../making/reply-form.ts';
import type { Entries } from '../recipe/entries.ts';

/** Which sheet lies under the hands: number `sheet` (1 upward) of the pack, with what was done to it so far. */
export interface UnderHands {
  readonly entries: Entries;
  readonly sheet: number;
  readonly work: Handwork;
}

export interface HeldPlace {
  /** Its number among the places of its task. */
  readonly place: number;
  /** Such as "box 2, figure 1: blue circle". */
  readonly name: string;
  readonly isLocked: boolean;
}

export interface HeldTask {
  readonly state: Verdict['state'];
  readonly isChanged: boolean;
  readonly answers: readonly string[];
  readonly problems: readonly Problem[];
  /** Those at which something stands. */
  readonly places: readonly HeldPlace[];
  /** Those at which nothing stands. */
  readonly empty: readonly HeldPlace[];
}

/** The sheet as it now is. */
export interface Held {
  readonly svg: string;
  readonly code: string;
  readonly hardness: string;
  /** In logits to 0.01, as it was made and as it is now. */
  readonly logits: { readonly before: number; readonly now: number };
  readonly tasks: readonly HeldTask[];
}

/** A figure to choose, with its picture. */
export interface HandOffer {
  readonly label: string;
  readonly figure: Figure;
  readonly isNow: boolean;
  readonly svg: string;
}

export interface HandOffers {
  readonly name: string;
  readonly groups: readonly {
    readonly attribute: Editable;
    readonly label: string;
    readonly offers: readonly HandOffer[];
  }[];
  /** Figures to put where nothing stands: those of the task. */
  readonly put: readonly HandOffer[];
  /** Whether its place can be left empty. */
  readonly canLeave: boolean;
  /** What the key asks for beside this figure, where it does. */
  readonly facts: readonly {
    readonly fact: number;
    readonly value: string;
    readonly choices: readonly string[];
  }[];
  readonly shapes: readonly { readonly label: string; readonly change: ShapeChange }[];
}

export interface HandTalk {
  /** What was done to the sheet before, as its code in the recipe says. */
  readonly take: {
    readonly ask: { readonly entries: Entries; readonly sheet: number };
    readonly reply: Reply<Handwork>;
  };
  readonly hold: { readonly ask: UnderHands; readonly reply: Reply<Held> };
  readonly deed: {
    readonly ask: UnderHands & { readonly deed: Deed };
    readonly reply: Reply<Handwork>;
  };
  readonly offers: {
    readonly ask: UnderHands & { readonly at: Spot };
    readonly reply: Reply<HandOffers>;
  };
  /** The smallest repair of a task in words; empty where none was found. */
  readonly mend: {
    readonly ask: UnderHands & { readonly task: number };
    readonly reply: Reply<string>;
  };
}
