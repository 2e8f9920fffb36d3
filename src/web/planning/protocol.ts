// What the screens about children ask the worker that knows of sheets by their codes.
import type { Day, Entry } from '../../records/index.ts';
import type { Use } from '../../supplies/index.ts';
import type { Reply, Shown } from '../making/protocol.ts';
import type {
  AnewAsked,
  CardsOfAsked,
  ChangeAsked,
  DayCards,
  GrowthView,
  RecordsAsked,
  RoomAsked,
  SheetCard,
  StockReply,
  TapTask,
  TodayAsked,
  UsesAsked,
  WeekAsked,
  WeekCards,
} from './cards.ts';

/** Questions to the planner, each with its reply. */
export interface PlanTalk {
  /** The sheet that a code stands for. */
  readonly sheet: { readonly ask: { readonly code: string }; readonly reply: Reply<Shown> };
  /** The plan of a day: the one that stands, or a suggestion. */
  readonly today: { readonly ask: TodayAsked; readonly reply: Reply<DayCards> };
  /** A sheet in place of one of the day's. */
  readonly change: { readonly ask: ChangeAsked; readonly reply: Reply<SheetCard> };
  /** Other sheets for a day, as a person asked for them; nothing is kept by it. */
  readonly anew: { readonly ask: AnewAsked; readonly reply: Reply<readonly SheetCard[]> };
  /** A new plan for days of one or several children; nothing is kept by it. */
  readonly week: { readonly ask: WeekAsked; readonly reply: Reply<readonly WeekCards[]> };
  /** Days of one or several children as their plans stand in the records. */
  readonly cards: { readonly ask: CardsOfAsked; readonly reply: Reply<readonly WeekCards[]> };
  /** How a child is getting on, up to a day. */
  readonly growth: { readonly ask: TodayAsked; readonly reply: Reply<GrowthView> };
  /** The entries of the invented group, up to the day before a day. */
  readonly demo: { readonly ask: { readonly day: Day }; readonly reply: Reply<readonly Entry[]> };
  /** What is in the house: the last count less what was given since. */
  readonly stock: { readonly ask: RecordsAsked; readonly reply: Reply<StockReply> };
  /** What sheets take against what there is. */
  readonly uses: { readonly ask: UsesAsked; readonly reply: Reply<readonly Use[]> };
  /** Whether a group’s pack asks for no more equally hard sheets than there are. */
  readonly room: { readonly ask: RoomAsked; readonly reply: Reply<true> };
  /** What can be tapped on the picture of a sheet, by task. */
  readonly taps: {
    readonly ask: { readonly code: string };
    readonly reply: Reply<readonly TapTask[]>;
  };
}
