// What the screen asks the maker while a sheet is changed by changing, and what comes back.
import type {
  Deed,
  Editable,
  EmptyCell,
  Problem,
  ShapeChange,
  SheetEdits,
  Spot,
  Verdict,
  Whole,
} from '../../editing/index.ts';
import type { Figure } from '../../figures/index.ts';
import type { Group } from '../making/group.ts';
import type { Reply } from '../making/reply-form.ts';
import type { Entries } from '../recipe/entries.ts';

/** A sheet of a pack, or of the pack of a group. */
export interface SheetOfPack {
  readonly entries: Entries;
  readonly group?: Group | undefined;
  /** Its number, 1 upward; the last one if there are fewer. */
  readonly sheet: number;
}

/** Which sheet is being changed, with what was done to it so far. */
export interface UnderChange extends SheetOfPack {
  readonly work: SheetEdits;
}

/** What was done to a sheet before. */
export interface Taken {
  /** The code of the sheet as it was made. */
  readonly made: string;
  readonly work: SheetEdits;
}

export interface HeldPlace {
  /** Its number among the places of its task. */
  readonly place: number;
  /** Such as "box 2, figure 1: blue circle". */
  readonly name: string;
  readonly isLocked: boolean;
}

/** A box or the like, which can be chosen as one. */
export interface HeldWhole extends Whole {
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
  readonly wholes: readonly HeldWhole[];
  /** Where those lie at which nothing stands, as far as the page shows it. */
  readonly cells: readonly EmptyCell[];
}

/** The sheet as it now is. */
export interface Held {
  readonly svg: string;
  readonly code: string;
  /** All changed sheets of the pack as a recipe writes them, this one among them. */
  readonly changed: readonly string[];
  readonly hardness: string;
  /** In logits to 0.01, as it was made and as it is now. */
  readonly logits: { readonly before: number; readonly now: number };
  readonly tasks: readonly HeldTask[];
}

/** A figure to choose, with its picture. */
export interface ChangeOffer {
  readonly label: string;
  readonly figure: Figure;
  readonly isNow: boolean;
  readonly svg: string;
}

export interface ChangeOffers {
  readonly name: string;
  readonly groups: readonly {
    readonly attribute: Editable;
    readonly label: string;
    readonly offers: readonly ChangeOffer[];
  }[];
  /** Figures to put where nothing stands: those of the task. */
  readonly put: readonly ChangeOffer[];
  /** Whether its place can be left empty. */
  readonly canLeave: boolean;
  /** What the key asks for beside this figure, where it does. */
  readonly facts: readonly {
    readonly fact: number;
    readonly value: string;
    readonly choices: readonly { readonly value: string; readonly label: string }[];
  }[];
  readonly shapes: readonly {
    readonly label: string;
    readonly change: ShapeChange;
    /** Of how many steps of its path the list is: a box’s own list is of fewer than that of its figures. */
    readonly depth: number;
  }[];
}

export interface ChangeTalk {
  /** What was done to the sheet before, as its code in the recipe says. */
  readonly take: { readonly ask: SheetOfPack; readonly reply: Reply<Taken> };
  readonly hold: { readonly ask: UnderChange; readonly reply: Reply<Held> };
  readonly deed: {
    readonly ask: UnderChange & { readonly deed: Deed };
    readonly reply: Reply<SheetEdits>;
  };
  readonly offers: {
    readonly ask: UnderChange & { readonly at: Spot };
    readonly reply: Reply<ChangeOffers>;
  };
  /** The smallest repair of a task in words; empty where none was found. */
  readonly mend: {
    readonly ask: UnderChange & { readonly task: number };
    readonly reply: Reply<string>;
  };
}
