// Answers the questions of the screens about children with the core; never throws.

import { accept } from '../../base/index.ts';
import { LANGUAGES, loadCatalogue } from '../../languages/index.ts';
import { loadDemo, newPlanner } from '../../plan/index.ts';
import type { Day } from '../../records/index.ts';
import type { Question } from '../asking/talk.ts';
import { brokenReply } from '../making/broken-reply.ts';
import { replyOf, replyOrBroken } from '../making/reply.ts';
import { sheetOfCode } from '../making/sheet-of-code.ts';
import { languageNow } from '../speaking/language-now.ts';
import { growthView } from './growth-view.ts';
import { anewCards, changedCard, standingCards, todayCards, weekCards } from './plan-cards.ts';
import type { PlanTalk } from './protocol.ts';
import { roomView } from './room-view.ts';
import { stockView, usesView } from './stock-view.ts';
import { tapTasks } from './tap-tasks.ts';

/** Kept as long as the worker lives: rungs and sheets are measured once. */
const planner = newPlanner();

type PlanReply = PlanTalk[keyof PlanTalk]['reply'];

export function answer(question: Question<PlanTalk>): PlanReply | Promise<PlanReply> {
  if (question.kind === 'demo') return demoGroup(question.day);
  if (question.kind === 'growth') return growth(question);
  return replyOrBroken(() => answered(question));
}

/** What was noted by name may have been said in any language; one that cannot be fetched is not read. */
async function growth(question: Extract<Question<PlanTalk>, { readonly kind: 'growth' }>) {
  await Promise.allSettled(LANGUAGES.map(loadCatalogue));
  return replyOrBroken(() => replyOf(growthView(planner, question), ''));
}

/** Fetched only here, since few look at it. */
async function demoGroup(day: Day): Promise<PlanReply> {
  try {
    const { demoEntries } = await loadDemo();
    return replyOf(accept(demoEntries(day, languageNow(), planner.read)), '');
  } catch (defect) {
    return brokenReply(defect);
  }
}

function answered(
  question: Exclude<Question<PlanTalk>, { readonly kind: 'demo' | 'growth' }>,
): PlanReply {
  switch (question.kind) {
    case 'sheet':
      return replyOf(sheetOfCode(question.code), '');
    case 'today':
      return replyOf(todayCards(planner, question), '');
    case 'change':
      return replyOf(changedCard(planner, question), '');
    case 'anew':
      return replyOf(anewCards(planner, question), '');
    case 'week':
      return replyOf(weekCards(planner, question), '');
    case 'cards':
      return replyOf(standingCards(planner, question), '');
    case 'stock':
      return replyOf(stockView(question), '');
    case 'uses':
      return replyOf(usesView(question), 'recipe' in question ? question.recipe.activity : '');
    case 'room':
      return replyOf(roomView(question), question.recipe.activity);
    case 'taps':
      return replyOf(tapTasks(question), '');
  }
}
