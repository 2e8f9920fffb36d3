// What a language must be able to say on guides and half-made sheets.
import type { Tool } from '../sheets/index.ts';
import type { CopyReason, Fold, Pen, Placement, RuledBox, RuledLine } from './parts.ts';

export interface ByHandWords {
  /** The title of a guide for the sheet of that activity and step. */
  readonly title: (activity: string, step: number) => string;
  readonly documentTitle: (sheets: number) => string;
  readonly halfMadeTitle: (sheets: number) => string;
  readonly continued: string;
  /** How long it takes, in minutes not rounded. */
  readonly takes: (minutes: number) => string;
  readonly layOut: string;
  /** The blank page, as it is to lie. */
  readonly paper: (name: string, isLying: boolean) => string;
  readonly ruler: string;
  readonly pens: (pens: readonly Pen[]) => string;
  readonly stickers: (count: number, colour: Pen, diameterMm: number) => string;
  /** What the child needs besides. */
  readonly forTheChild: (things: readonly string[]) => string;
  readonly childStickers: (count: number, colour: Pen, diameterMm: number) => string;
  readonly childCrayons: (colours: readonly Pen[]) => string;
  readonly childTools: Readonly<Record<Tool, string>>;
  /** Under the small picture of the page. */
  readonly howItLooks: string;
  readonly howToRead: string;
  readonly whyCopied: (reason: CopyReason) => string;
  readonly someCopied: (count: number) => string;
  readonly foldFirst: string;
  readonly fold: (folds: readonly Fold[]) => string;
  readonly rule: string;
  readonly box: (box: RuledBox) => string;
  readonly line: (line: RuledLine) => string;
  /** The heading of all stickers of one colour and size, or of all that is drawn with one pen. */
  readonly stickerHeading: (count: number, colour: Pen, diameterMm: number) => string;
  readonly penHeading: (count: number, pen: Pen) => string;
  readonly stickerPlace: (placement: Placement, isFolded: boolean) => string;
  readonly drawnPlace: (placement: Placement, isFolded: boolean) => string;
  /** The same, of a page that is copied. */
  readonly copiedThing: (placement: Placement) => string;
  readonly codeToWrite: (code: string) => string;
  readonly last: string;
  /** The page before half-made sheets, and what it lists. */
  readonly stickFirst: string;
  readonly stickFirstHow: string;
  readonly noStickers: string;
  readonly sheetNumber: (number: number, code: string) => string;
  readonly answers: string;
  readonly grid: string;
  readonly gridAdvice: string;
  readonly circleFor: (colour: string) => string;
  readonly ring: string;
  readonly dashedRing: string;
  readonly dot: string;
  readonly patch: (colour: string) => string;
  readonly written: (words: string) => string;
}
