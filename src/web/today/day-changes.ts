// What a change by hand makes of the sheets of a day, and the entry that keeps them.
import { addDays } from '../../plan/index.ts';
import type { Day, Draft, PlanEntry, PlannedSheet } from '../../records/index.ts';
import type { Reply } from '../making/protocol.ts';
import type { ChangeAsked, SheetCard, TodayAsked } from '../planning/cards.ts';
import { planOf } from '../planning/planned.ts';
import type { Planner } from '../planning/planner.ts';

/** The plans of the child, by their days. */
export type Plans = ReadonlyMap<Day, PlanEntry>;

/** The day without the sheet. One that was moved on before is planned for the next day, before what is planned there. */
export function takenOut(
  { child, day }: TodayAsked,
  sheets: readonly SheetCard[],
  card: SheetCard,
  plans: Plans | undefined,
): readonly Draft[] {
  const rest = planOf(child, day, without(sheets, card));
  if (card.why !== 'moved-on') return [rest];
  const next = addDays(day, 1);
  return [rest, planOf(child, next, [card, ...(plans?.get(next)?.sheets ?? [])])];
}

/** Whether the plan is of these sheets in this order. */
export function isPlanOf(plan: PlanEntry | undefined, sheets: readonly PlannedSheet[]): boolean {
  const textOf = (planned: readonly PlannedSheet[]) => planned.map(({ code }) => code).join(' ');
  return plan !== undefined && textOf(plan.sheets) === textOf(sheets);
}

function without(sheets: readonly SheetCard[], card: SheetCard): readonly SheetCard[] {
  return sheets.filter(({ code }) => code !== card.code);
}

export function replaced(
  sheets: readonly SheetCard[],
  card: SheetCard,
  other: SheetCard,
): readonly SheetCard[] {
  return sheets.map((sheet) => (sheet.code === card.code ? other : sheet));
}

/** The sheet one place earlier (−1) or later (1). */
export function moved(
  sheets: readonly SheetCard[],
  card: SheetCard,
  by: -1 | 1,
): readonly SheetCard[] {
  const others = without(sheets, card);
  const place = sheets.findIndex(({ code }) => code === card.code) + by;
  return [...others.slice(0, place), card, ...others.slice(place)];
}

/** Another sheet in place of one. Once all else was declined, what was declined may come again. */
export async function anotherSheet(
  planner: Planner,
  asked: Omit<ChangeAsked, 'without'>,
  ofTheDay: readonly string[],
  declined: ReadonlySet<string>,
): Promise<Reply<SheetCard>> {
  const reply = await planner.ask('change', { ...asked, without: [...ofTheDay, ...declined] });
  if (reply.ok || asked.how !== 'something-else' || declined.size === 0) return reply;
  return planner.ask('change', { ...asked, without: ofTheDay });
}
