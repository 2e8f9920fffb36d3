// Answers the questions of the screens about children with the core; never throws.

import { newPlanner } from '../../plan/index.ts';
import type { Question } from '../asking/talk.ts';
import { replyOf, replyOrBroken } from '../making/reply.ts';
import { sheetOfCode } from '../making/sheet-of-code.ts';
import { growthView } from './growth-view.ts';
import { anewCards, changedCard, standingCards, todayCards, weekCards } from './plan-cards.ts';
import type { PlanTalk } from './protocol.ts';
import { tapTasks } from './tap-tasks.ts';

/** Kept as long as the worker lives: rungs and sheets are measured once. */
const planner = newPlanner();

export function answer(question: Question<PlanTalk>): PlanTalk[keyof PlanTalk]['reply'] {
  return replyOrBroken(() => answered(question));
}

function answered(question: Question<PlanTalk>): PlanTalk[keyof PlanTalk]['reply'] {
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
    case 'growth':
      return replyOf(growthView(planner, question), '');
    case 'taps':
      return replyOf(tapTasks(question), '');
  }
}
