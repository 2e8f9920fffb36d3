// What every plan is made with: the child's records, the things and the paper, and what is measured once.
import { randomFrom } from '../base/index.ts';
import type { PageChoice, PrintStyle } from '../page/index.ts';
import type { Child, Day, Id, PlanEntry, ResultInView, Stock, View } from '../records/index.ts';
import { paperIn, printOn } from '../supplies/index.ts';
import type { Setting } from './course.ts';
import { type RungBook, rungBook } from './rung-book.ts';
import { seedOf } from './seed.ts';
import { factsReader, type ReadFacts } from './sheet-facts.ts';
import { type Standing, standingOn } from './standing.ts';
import { boundsOf, kindsIn, type MaterialKind } from './suits.ts';

/** All that is recorded of one child. */
export interface Known {
  readonly child: Child;
  readonly results: readonly ResultInView[];
  readonly plans: ReadonlyMap<Day, PlanEntry>;
}

/** What a person wishes of a plan. */
export interface Wishes {
  readonly page: PageChoice;
  readonly print: PrintStyle['print'];
  /** Kinds of things that are in the house; absent: all. Where it was counted, the count says it. */
  readonly supplies?: ReadonlySet<MaterialKind>;
  /** What is left of what was counted; absent: it never was. */
  readonly stock?: Stock;
}

/** What is slow to find out and stays true: rungs and sheets. Keep one for as long as plans are made. */
export interface Planner {
  readonly read: ReadFacts;
  readonly book: (print: PrintStyle['print']) => RungBook;
}

export function newPlanner(): Planner {
  const books = new Map<PrintStyle['print'], RungBook>();
  return {
    read: factsReader(),
    book: (print) => {
      const book = books.get(print) ?? rungBook({ print });
      books.set(print, book);
      return book;
    },
  };
}

export function knownOf(view: View, id: Id): Known | undefined {
  const child = view.children.find((each) => each.id === id);
  return (
    child && {
      child,
      results: view.results.get(id) ?? [],
      plans: view.plans.get(id) ?? new Map(),
    }
  );
}

/** The setting for a child's plans on a day; `turn` tells plans for the same day apart. */
export function settingFor(
  planner: Planner,
  { child, results }: Known,
  day: Day,
  wishes: Wishes,
  turn = '',
): Setting {
  return settingAt(planner, child, standingOn(day, child, results, planner.read), wishes, turn);
}

/** The setting for a child that stands so; of the standing's day. */
export function settingAt(
  planner: Planner,
  child: Child,
  standing: Standing,
  { page, print, supplies, stock }: Wishes,
  turn: string,
): Setting {
  const { day } = standing;
  const printed = stock === undefined ? print : printOn(stock, print);
  const paper = stock === undefined ? page.paper : paperIn(stock, page.paper);
  return {
    standing,
    bounds: boundsOf(child, day, stock === undefined ? supplies : kindsIn(stock)),
    book: planner.book(printed),
    page: { ...page, paper },
    print: printed,
    ...(child.writingHand === 'left' ? { hand: child.writingHand } : {}),
    ...(stock === undefined ? {} : { stock: ofAnyPaper(stock) }),
    random: randomFrom(seedOf(child.id, day, turn)),
  };
}

/** A plan without the right paper is better than none: what it lacks is told beside it. */
function ofAnyPaper({ papers: _any, ...stock }: Stock): Stock {
  return stock;
}
