// What the app and its workers say to each other: plain data, so that it can cross between threads.
import type { AgeHint, Parameter, Values } from '../../activities/index.ts';
import type { Doubt } from '../../editing/index.ts';
import type { OwnPicture } from '../../figures/index.ts';
import type { Language } from '../../languages/index.ts';
import type { Ink } from '../../page/index.ts';
import type { ColourName } from '../../palette/index.ts';
import type { Report } from '../../plan/index.ts';
import type { FiledSheet, Framework } from '../../sheets/index.ts';
import type { ChangeTalk } from '../changing/change-talk.ts';
import type { Entries, LayoutChoice } from '../recipe/entries.ts';
import type { Group } from './group.ts';
import type { Objection, Reply } from './reply-form.ts';

export type { Group } from './group.ts';
export type { Objection, Reply } from './reply-form.ts';

/** A parameter of an activity with its words. */
export interface ParameterCard {
  readonly name: string;
  readonly spec: Parameter;
  readonly label: string;
  readonly help: string;
  readonly choices: Readonly<Record<string, string>>;
}

export interface StepCard {
  readonly values: Values;
  readonly age: AgeHint;
  readonly tasks: number;
  /** What changed against the step below, in words. */
  readonly change: string;
}

/** All that the controls must know of an activity. */
export interface ActivityCard {
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly parameters: readonly ParameterCard[];
  /** Whether its sheets can show pictures of the family's own. */
  readonly takesOwnPictures: boolean;
  readonly steps: readonly StepCard[];
}

/** A colour that sheets may have, and what it is printed as. */
export interface ColourCard {
  readonly name: ColourName;
  readonly hex: string;
}

export interface Catalogue {
  readonly activities: readonly ActivityCard[];
  readonly papers: readonly string[];
  readonly orientations: readonly string[];
  readonly prints: readonly string[];
  /** How the page can be laid out and drawn, the usual way first. */
  readonly layouts: Readonly<Record<LayoutChoice, readonly string[]>>;
  readonly colours: readonly ColourCard[];
  /** Contents that can be about the letters of a name. */
  readonly letterContents: readonly string[];
  /** Curricula by their ids, each with its name. */
  readonly frameworks: Readonly<Record<string, string>>;
  /** Whose pictures the sheets may show, and under which licence. */
  readonly credit: string;
}

export const VIEWS = ['sheet', 'cut', 'answers', 'adult'] as const;
export type View = (typeof VIEWS)[number];

/** A page as it is to be shown. */
export interface Shown {
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  /** Which sheet of the pack, or which of the adult's pages, 1 upward, and how many there are. */
  readonly place: number;
  readonly places: number;
  /** Which page of a sheet that takes several, such as a guide, 1 upward, and how many it takes. */
  readonly leaf: number;
  readonly leaves: number;
  /** Which sheet of the pack all this is about, 1 upward, and how many there are. */
  readonly sheet: number;
  readonly sheets: number;
  /** Whose sheet it is, in a pack for a group. */
  readonly child?: ShownChild;
  readonly tasks: number;
  readonly code: string;
  /** What is told of the letters of a name; empty where nothing was asked of them. */
  readonly nameNotes: readonly string[];
  readonly activity: string;
  readonly step: number;
  readonly values: Values;
  /** Names of parameters that gave way to what the person set. */
  readonly gaveWay: readonly string[];
  /** How hard the sheet is and why. */
  readonly hardness: string;
  /** Each answer in words. */
  readonly answers: readonly string[];
  /** Pairs of colours on the sheet that look alike to some children. */
  readonly alike: readonly (readonly [string, string])[];
  /** What was chosen to be cut out, by name: what this sheet has, and what it cannot have. */
  readonly toCut: { readonly had: readonly string[]; readonly lacking: readonly string[] };
  /** Tasks of the whole pack that were changed and are not certain; numbers from 1. */
  readonly doubts: readonly ShownDoubt[];
}

export interface ShownChild {
  /** As the sheet has it, set apart from words that are written the other way. */
  readonly name: string;
  /** Place in the group, 1 upward. */
  readonly number: number;
  readonly children: number;
  /** Sheets of each child, one after the other in the pack. */
  readonly sheets: number;
}

export interface ShownDoubt {
  readonly sheet: number;
  readonly task: number;
  readonly reason: Doubt['reason'];
}

/** A sheet of a pack file, with the name of its activity. */
export interface FiledSheetShown extends FiledSheet {
  readonly name: string;
}

export interface FiledPackShown {
  readonly sheets: readonly FiledSheetShown[];
  /** The own pictures that came with it, for the other workers to know them too. */
  readonly pictures: readonly OwnPicture[];
}

/** Share of a sheet that is inked, 0 to 1, in full and to save ink. */
export type Inked = Readonly<Record<Ink, number>>;

export type Direction = 'easier' | 'harder';

/** What the 50 mm line measured, and whether that is true size as near as a ruler can tell. */
export interface Measure {
  readonly measuredMm: number;
  readonly isTrue: boolean;
}

/** Questions to the maker, each with its reply. */
export interface MakerTalk extends ChangeTalk {
  readonly catalogue: { readonly ask: object; readonly reply: Reply<Catalogue> };
  readonly show: {
    readonly ask: {
      readonly entries: Entries;
      readonly view: View;
      readonly wanted: number;
      /** Of a sheet that takes several pages. */
      readonly leaf: number;
      readonly group?: Group | undefined;
    };
    readonly reply: Reply<Shown>;
  };
  /** Of a sheet of the pack; apart from the page, which it takes longer than to make. */
  readonly inked: {
    readonly ask: {
      readonly entries: Entries;
      readonly sheet: number;
      readonly group?: Group | undefined;
    };
    readonly reply: Reply<Inked>;
  };
  /** The same pack about half a logit harder or easier, content and response as they are. */
  readonly notch: {
    readonly ask: { readonly entries: Entries; readonly direction: Direction };
    readonly reply: Reply<Entries>;
  };
  /** The sheets of a pack file, each to be opened by its code. */
  readonly openFile: {
    readonly ask: { readonly text: string };
    readonly reply: Reply<FiledPackShown>;
  };
  readonly open: { readonly ask: { readonly code: string }; readonly reply: Reply<Entries> };
  /** What the 50 mm line measured, as it was typed, for printing on the paper. */
  readonly measure: {
    readonly ask: { readonly text: string; readonly paper: string };
    readonly reply: Reply<Measure>;
  };
}

/** A page for the browser's own printing. */
export interface PrintPage {
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What is to be pressed: the pack of a recipe; or under a name, sheets by their codes in that order, a report, or the page to check a printer with. */
export type PressWhat =
  | { readonly entries: Entries; readonly group?: Group }
  | {
      readonly codes: readonly string[];
      readonly name: string;
      /** Curricula whose goals the adult's page names; absent: none. */
      readonly goals?: readonly Framework[];
    }
  | { readonly report: Report; readonly name: string }
  | { readonly rulerFor: string; readonly name: string };

/** One file, pages for the browser's own printing, or a ZIP of one file for each child of a group; or the pack file. */
export type PressAs = 'pdf' | 'pages' | 'zip' | 'pack';

export type PressOrder = PressWhat & {
  readonly as: PressAs;
  /** What its pages and its news are written in. */
  readonly language: Language;
  /** The family's own pictures, of which the pages may show some. */
  readonly ownPictures: readonly OwnPicture[];
  /** What the 50 mm line measures on the printer of this device; absent: it prints true size. */
  readonly measuredMm?: number;
};

/** What the press says while it works, and at the end. */
export type PressNews =
  | { readonly kind: 'making'; readonly done: number; readonly total: number }
  | { readonly kind: 'writing'; readonly done: number; readonly total: number }
  | { readonly kind: 'pdf' | 'zip'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'pack'; readonly bytes: Uint8Array<ArrayBuffer> }
  /** One by one, so that the screen lays each out in a task of its own; `pages`: that was the last. */
  | { readonly kind: 'page'; readonly page: PrintPage }
  | { readonly kind: 'pages' }
  | { readonly kind: 'refused'; readonly objections: readonly Objection[] }
  | { readonly kind: 'broken'; readonly detail: string };
