// What the planner is asked and what it tells: plain data with names in words, so that it can cross between threads.
import type { Skill } from '../../activities/index.ts';
import type { PageChoice } from '../../page/index.ts';
import type {
  CourseChart,
  FittingStep,
  Growth,
  MaterialKind,
  SkillGrowth,
} from '../../plan/index.ts';
import type { Day, Entry, Id, Shelf, Stock, Why } from '../../records/index.ts';
import type { PackMaterials } from '../../sheets/index.ts';
import type { Lacking, Use } from '../../supplies/index.ts';
import type { Group } from '../making/protocol.ts';
import type { Entries } from '../recipe/entries.ts';

/** The records that an answer is made from. */
export interface RecordsAsked {
  readonly entries: readonly Entry[];
  readonly shelf: Shelf;
}

/** What a person wishes of plans; remembered between visits. */
export interface PlanWishes {
  /** Minutes a day. */
  readonly minutes: number;
  readonly page: PageChoice;
  readonly print: 'colour' | 'grey';
  /** Kinds of things that are in the house; absent: all. */
  readonly supplies?: readonly MaterialKind[];
  /** What is left of what was counted, which goes before `supplies`; absent: the records say it. */
  readonly stock?: Stock;
}

export interface TodayAsked extends RecordsAsked {
  readonly child: Id;
  readonly day: Day;
  readonly wishes: PlanWishes;
}

export interface ChangeAsked extends TodayAsked {
  /** The sheet that is to be another one. */
  readonly code: string;
  readonly how: 'easier' | 'harder' | 'something-else';
  /** Activities that are not wanted, for something else: those of the day, and those declined before. */
  readonly without: readonly string[];
}

export interface AnewAsked extends TodayAsked {
  /** The sheets that the new ones are to take the place of. */
  readonly codes: readonly string[];
  /** Activities that are not wanted where there is enough else. */
  readonly without: readonly string[];
}

export interface CardsOfAsked extends RecordsAsked {
  readonly children: readonly Id[];
  readonly days: readonly Day[];
  readonly today: Day;
  readonly wishes: PlanWishes;
}

export interface WeekAsked extends CardsOfAsked {
  readonly favoured: readonly Skill[];
  /** Sheets of other children that are planned along with these and take of the same house. */
  readonly taken?: readonly string[];
}

/** A sheet in a plan. */
export interface SheetCard {
  readonly code: string;
  readonly activity: string;
  /** Name of the activity, such as `odd one out`. */
  readonly name: string;
  readonly skill: Skill;
  readonly step: number;
  readonly steps: number;
  /** What it is about, such as `colours`. */
  readonly content: string;
  /** The hand that it is laid out for, where it is not the right one. */
  readonly hand?: 'left';
  readonly tasks: number;
  readonly why: Why;
  /** Days since the activity was last given; absent: never. */
  readonly restedDays?: number;
  /** About how many minutes it takes this child. */
  readonly minutes: number;
  readonly materials: PackMaterials;
  /** Whether it has been recorded for the child on its day or later. */
  readonly isDone: boolean;
  /** The first day from today on with a sheet of an earlier day that was not done; absent: none, or not asked for. */
  readonly movesOnTo?: Day;
}

/** What the house has not of what is needed. */
export interface Wanting {
  /** Absent where nothing is lacking, or the house was never counted. */
  readonly lacking?: Lacking;
  /** All that is needed against what there is; absent where the house was never counted. */
  readonly uses?: readonly Use[];
}

/** What sheets take of a house: those of a recipe, or those of codes. */
export type UsesAsked = { readonly stock: Stock } & (
  | { readonly recipe: Entries; readonly group?: Group }
  | { readonly codes: readonly string[] }
);

/** A pack for a group. */
export interface RoomAsked {
  readonly recipe: Entries;
  readonly group: Group;
}

/** What is in the house. */
export interface StockReply {
  /** Absent until it was counted. */
  readonly stock?: {
    /** Milliseconds since 1970. */
    readonly countedAt: number;
    /** Sheets recorded since then. */
    readonly given: number;
    readonly left: Stock;
  };
}

export interface DayCards extends Wanting {
  readonly day: Day;
  readonly sheets: readonly SheetCard[];
  /** All that is to be laid out for the sheets that are not done. */
  readonly materials: PackMaterials;
  /** Whether the plan stands in the records; else it is a suggestion. */
  readonly isKept: boolean;
}

export interface WeekCards {
  readonly child: Id;
  readonly days: readonly DayCards[];
}

/** The step that fits, with the name of the activity. */
export type FittingWords = Omit<FittingStep, 'activity'> & { readonly name: string };

/** A course with the name of the activity whose steps measure it. */
export type CourseWords = CourseChart & { readonly name: string };

export type SkillView = Omit<SkillGrowth, 'fitting' | 'chart'> & {
  readonly fitting: readonly FittingWords[];
  readonly chart?: CourseWords;
};

/** Growth with the names of activities. */
export type GrowthView = Omit<Growth, 'skills'> & { readonly skills: readonly SkillView[] };

/** What can be tapped in one task of a sheet. */
export interface TapTask {
  /** Marks that are chosen by tapping them, with what each shows. */
  readonly choices: readonly {
    readonly mark: number;
    readonly name: string;
    readonly isRight: boolean;
  }[];
  /** Marks of figures that something was decided about; tapped, one of the names is chosen. */
  readonly about: readonly {
    readonly mark: number;
    readonly name: string;
    readonly wrong: readonly string[];
  }[];
}
