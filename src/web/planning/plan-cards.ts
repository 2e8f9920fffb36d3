// Makes the cards of plans with the core.
import { type ActivityId, activityOf, isActivityId } from '../../activities/index.ts';
import { accept, type Refusal, type Result, refuse, told } from '../../base/index.ts';
import {
  type DayWishes,
  type Known,
  knownOf,
  movesOnTo,
  notchedSheet,
  type Planner,
  planAnew,
  planToday,
  planWeek,
  type Suggestion,
  settingFor,
  somethingElse,
  standingToday,
  toSuggestions,
  type Wishes,
} from '../../plan/index.ts';
import { type Day, type Id, type Stock, viewOf } from '../../records/index.ts';
import { gatheredMaterials } from '../../sheets/index.ts';
import { dayAt } from '../children/today.ts';
import { languageNow } from '../speaking/language-now.ts';
import type {
  AnewAsked,
  CardsOfAsked,
  ChangeAsked,
  DayCards,
  PlanWishes,
  RecordsAsked,
  SheetCard,
  TodayAsked,
  WeekAsked,
  WeekCards,
} from './cards.ts';
import { openOf } from './planned.ts';
import { stockLeft, stockWithout, wantingOf } from './stock-view.ts';

/** What is recorded of a child; one whose languages nobody said is taken to read that of the screen. */
function knownHere(view: Parameters<typeof knownOf>[0], id: Id): Known | undefined {
  const known = knownOf(view, id);
  const language = languageNow();
  if (known === undefined || known.child.languages?.length || language === 'en') return known;
  return { ...known, child: { ...known.child, languages: [language] } };
}

/** What is recorded of a child in view. Refuses one that is not. */
export function knownIn({ entries, shelf }: RecordsAsked, child: Id): Result<Known> {
  const known = knownHere(viewOf(entries, shelf), child);
  return known
    ? accept(known)
    : refuse({
        code: 'unreadable',
        at: 'child',
        got: child,
        expected: told('reasons', 'expected.child'),
      });
}

/** A count goes before what was wished: there is one truth of what is in the house. */
export function wishesOf(
  { page, print, supplies, stock: wished }: PlanWishes,
  stock: Stock | undefined = wished,
): Wishes {
  return {
    page,
    print,
    ...(supplies === undefined ? {} : { supplies: new Set(supplies) }),
    ...(stock === undefined ? {} : { stock }),
  };
}

function dayWishesOf(wishes: PlanWishes, day: Day, left: Stock | undefined): DayWishes {
  return { ...wishesOf(wishes, left), day, minutes: wishes.minutes };
}

export function todayCards(
  planner: Planner,
  { child, day, wishes, ...records }: TodayAsked,
): Result<DayCards> {
  const known = knownIn(records, child);
  if (!known.ok) return known;
  const left = stockLeft(records);
  const sheets = planToday(planner, known.value, dayWishesOf(wishes, day, left), dayAt);
  const cards = dayCards(planner, known.value, day, sheets, wishes);
  const open = openOf(cards).map(({ code }) => code);
  return accept({ ...cards, ...wantingOf(open, left) });
}

/** The cards of days as they stand in the records, nothing made anew; today is led by what moves on to it. */
export function standingCards(
  planner: Planner,
  { children, days, today, wishes, ...records }: CardsOfAsked,
): Result<readonly WeekCards[]> {
  const view = viewOf(records.entries, records.shelf);
  const weeks = children.flatMap((child) => {
    const known = knownHere(view, child);
    return known
      ? [{ child, days: days.map((day) => standingDay(planner, known, day, today, wishes)) }]
      : [];
  });
  return accept(weeks);
}

function standingDay(
  planner: Planner,
  known: Known,
  day: Day,
  today: Day,
  wishes: PlanWishes,
): DayCards {
  const planned =
    day === today ? standingToday(known, day, dayAt) : (known.plans.get(day)?.sheets ?? []);
  const { standing } = settingFor(planner, known, day, wishesOf(wishes));
  const cards = dayCards(planner, known, day, toSuggestions(planner, standing, planned), wishes);
  if (day >= today) return cards;
  const movesOn = movesOnTo(known, today, dayAt);
  const sheets = cards.sheets.map((card) => {
    const next = card.isDone ? undefined : movesOn(card.code);
    return next === undefined ? card : { ...card, movesOnTo: next };
  });
  return { ...cards, sheets };
}

export function weekCards(
  planner: Planner,
  { children, days, today, favoured, wishes, taken = [], ...records }: WeekAsked,
): Result<readonly WeekCards[]> {
  const stock = stockWithout(wishes.stock, taken);
  const view = viewOf(records.entries, records.shelf);
  const weeks = children.flatMap((child) => {
    const known = knownHere(view, child);
    if (!known) return [];
    const week = planWeek(planner, known, {
      ...wishesOf(wishes, stock),
      days,
      today,
      minutes: wishes.minutes,
      favoured: new Set(favoured),
    });
    const cards = [...week].map(([day, sheets]) => dayCards(planner, known, day, sheets, wishes));
    return [{ child, days: cards }];
  });
  return accept(weeks);
}

/** One sheet in place of another. Refuses where no other can be had. */
export function changedCard(
  planner: Planner,
  { child, day, wishes, code, how, without, ...records }: ChangeAsked,
): Result<SheetCard> {
  const known = knownIn(records, child);
  if (!known.ok) return known;
  const dayWishes = dayWishesOf(wishes, day, stockLeft(records));
  const made =
    how === 'something-else'
      ? accept(somethingElse(planner, known.value, dayWishes, code, activitiesOf(without)))
      : notchedSheet(planner, known.value, dayWishes, code, how);
  if (!made.ok) return made;
  if (made.value === undefined) return refuse(NOTHING_SUITS);
  const { pace } = settingFor(planner, known.value, day, dayWishes).standing;
  return accept(cardOf(made.value, known.value, day, pace));
}

/** Other sheets for the day. Refuses where there are none. */
export function anewCards(
  planner: Planner,
  { child, day, wishes, codes, without, ...records }: AnewAsked,
): Result<readonly SheetCard[]> {
  const known = knownIn(records, child);
  if (!known.ok) return known;
  const dayWishes = dayWishesOf(wishes, day, stockLeft(records));
  const sheets = planAnew(planner, known.value, dayWishes, codes, activitiesOf(without));
  if (sheets.length === 0) return refuse(NOTHING_SUITS);
  return accept(dayCards(planner, known.value, day, sheets, wishes).sheets);
}

const NOTHING_SUITS: Refusal = {
  code: 'missing',
  at: 'plan',
  expected: told('reasons', 'expected.suiting'),
};

function activitiesOf(names: readonly string[]): ReadonlySet<ActivityId> {
  return new Set(names.filter(isActivityId));
}

function dayCards(
  planner: Planner,
  known: Known,
  day: Day,
  sheets: readonly Suggestion[],
  wishes: PlanWishes,
): DayCards {
  const { standing } = settingFor(planner, known, day, wishesOf(wishes));
  const cards = sheets.map((sheet) => cardOf(sheet, known, day, standing.pace));
  const left = sheets.filter((_, place) => !cards[place]?.isDone);
  return {
    day,
    sheets: cards,
    materials: gatheredMaterials(left.flatMap(({ facts }) => facts.materials)),
    isKept: known.plans.has(day),
  };
}

function cardOf(
  { facts, why, restedDays }: Suggestion,
  { results }: Known,
  day: Day,
  pace: number,
): SheetCard {
  const activity = activityOf(facts.activity);
  const { name, parameters } = activity.words[languageNow()];
  return {
    code: facts.code,
    activity: facts.activity,
    name,
    skill: facts.skill,
    step: facts.step,
    steps: activity.ladder.length,
    content: parameters.content?.choices?.[facts.content] ?? facts.content,
    ...(facts.hand === undefined ? {} : { hand: facts.hand }),
    tasks: facts.tasks.length,
    why,
    ...(restedDays === undefined ? {} : { restedDays }),
    minutes: pace * facts.minutes,
    materials: gatheredMaterials(facts.materials),
    isDone: results.some((result) => result.code === facts.code && result.day >= day),
  };
}
