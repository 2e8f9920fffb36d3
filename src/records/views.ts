// What entries come to: the children, their results and plans, whatever the order in which the entries are kept.
import type { Deed } from '../activities/index.ts';
import type {
  ChildEntry,
  ColourVision,
  Day,
  Entry,
  Month,
  PlanEntry,
  ResultEntry,
  StockEntry,
  UndoneEntry,
  WritingHand,
} from './entry.ts';
import { byId, type Id } from './ids.ts';

/** Real entries and those of the invented group are two shelves; nothing is ever in view from both. */
export type Shelf = 'real' | 'demo';

export interface Child {
  readonly id: Id;
  readonly nickname: string;
  readonly birthMonth?: Month;
  readonly writingHand?: WritingHand;
  readonly colourVision?: ColourVision;
  readonly languages?: readonly string[];
  readonly deeds?: readonly Deed[];
}

/** Of very many records of one sheet and day, as a file made by hand may hold, each names so many others and no more. */
export const MOST_NAMED = 8;

export interface ResultInView extends ResultEntry {
  /**
   * Other results of the same child, sheet code and day: recorded on two devices, or given twice.
   * Which of the two it was cannot be known, so all stay in view until a person takes one back. At most `MOST_NAMED`.
   */
  readonly alsoRecorded: readonly Id[];
}

/** The last count of what is in the house, and what was given since then. */
export interface StockInView {
  readonly counted: StockEntry;
  /** Codes of the sheets recorded after it, as often as they were. */
  readonly givenSince: readonly string[];
}

export interface View {
  /** In the order in which they were first recorded. */
  readonly children: readonly Child[];
  /** Taken out of view with everything recorded of them, and kept: undoing that brings them back. */
  readonly gone: readonly Child[];
  /** By child in view: the days on which sheets were given in order, within a day as recorded. */
  readonly results: ReadonlyMap<Id, readonly ResultInView[]>;
  /** By child in view and day: the latest plan in force, which may be of no sheets. */
  readonly plans: ReadonlyMap<Id, ReadonlyMap<Day, PlanEntry>>;
  /** Absent until it was counted for the first time. */
  readonly stock?: StockInView;
}

/** All that is in view on one shelf. A child is in view while an entry in force gives its nickname. */
export function viewOf(entries: readonly Entry[], shelf: Shelf = 'real'): View {
  const inForce = entriesInForce(entries.filter((entry) => shelfOf(entry) === shelf));
  const gone = new Set(
    inForce.flatMap((entry) => (entry.kind === 'child-gone' ? entry.child : [])),
  );
  const named = childrenOf(inForce.filter((entry) => entry.kind === 'child'));
  const children = named.filter(({ id }) => !gone.has(id));
  const given = grouped(
    inForce.filter((entry) => entry.kind === 'result'),
    (result) => result.child,
  );
  const planned = grouped(
    inForce.filter((entry) => entry.kind === 'plan'),
    (plan) => plan.child,
  );
  const stock = stockIn(inForce);
  return {
    ...(stock === undefined ? {} : { stock }),
    children,
    gone: named.filter(({ id }) => gone.has(id)),
    results: new Map(children.map(({ id }) => [id, resultsInOrder(given.get(id) ?? [])])),
    plans: new Map(children.map(({ id }) => [id, latestByDay(planned.get(id) ?? [])])),
  };
}

export function shelfOf(entry: Entry): Shelf {
  return entry.demo ? 'demo' : 'real';
}

/**
 * The entries that nothing takes back, by id. An `undone` counts if it is itself in force and later
 * than what it names; so undoing an undoing restores, and no ring of them is possible.
 */
function entriesInForce(entries: readonly Entry[]): readonly Entry[] {
  const takenBack = new Set<Id>();
  const latestFirst = entries
    .filter((entry) => entry.kind === 'undone')
    .sort(byId)
    .reverse();
  for (const { id, entry } of latestFirst satisfies readonly UndoneEntry[]) {
    if (entry < id && !takenBack.has(id)) takenBack.add(entry);
  }
  return entries.filter(({ id }) => !takenBack.has(id)).sort(byId);
}

function childrenOf(entries: readonly ChildEntry[]): readonly Child[] {
  const byChild = grouped(entries, (entry) => entry.child);
  return [...byChild].flatMap(([id, changes]) => {
    const { nickname, ...facts } = Object.assign({}, ...changes.map(factsOf)) as Partial<Child>;
    return nickname === undefined ? [] : [{ ...known(facts), id, nickname }];
  });
}

function factsOf({ id, at, kind, child, demo, ...facts }: ChildEntry): object {
  return facts;
}

/** Without the facts that were taken back. */
function known<T extends object>(facts: T): T {
  return Object.fromEntries(Object.entries(facts).filter(([, fact]) => fact !== null)) as T;
}

function resultsInOrder(results: readonly ResultEntry[]): readonly ResultInView[] {
  const same = grouped(results, ({ code, day }) => `${day} ${code}`);
  return results
    .map((result) => {
      const alike = same.get(`${result.day} ${result.code}`) ?? [];
      return {
        ...result,
        alsoRecorded: alike
          .slice(0, MOST_NAMED + 1)
          .flatMap(({ id }) => (id === result.id ? [] : [id]))
          .slice(0, MOST_NAMED),
      };
    })
    .sort(
      (one, other) => Number(one.day > other.day) - Number(one.day < other.day) || byId(one, other),
    );
}

function stockIn(inForce: readonly Entry[]): StockInView | undefined {
  const counted = inForce.filter((entry) => entry.kind === 'stock').at(-1);
  if (counted === undefined) return undefined;
  const since = inForce.filter((entry) => entry.kind === 'result' && entry.id > counted.id);
  return { counted, givenSince: since.flatMap((entry) => ('code' in entry ? entry.code : [])) };
}

/** Of plans by id, the latest of each day; the days in order. */
function latestByDay(plans: readonly PlanEntry[]): ReadonlyMap<Day, PlanEntry> {
  const latest = new Map(plans.map((plan) => [plan.day, plan]));
  return new Map([...latest].sort(([one], [other]) => Number(one > other) - Number(one < other)));
}

/** Groups in the order of their first members. */
function grouped<T>(things: readonly T[], keyOf: (thing: T) => string): ReadonlyMap<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const thing of things) {
    const group = groups.get(keyOf(thing));
    if (group) group.push(thing);
    else groups.set(keyOf(thing), [thing]);
  }
  return groups;
}
