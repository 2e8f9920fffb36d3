// Answers the questions of the screens about children with the core; never throws.
import type { Question } from '../asking/talk.ts';
import { replyOf, replyOrBroken } from '../making/reply.ts';
import { sheetOfCode } from '../making/sheet-of-code.ts';
import type { PlanTalk } from './protocol.ts';

export function answer(question: Question<PlanTalk>): PlanTalk[keyof PlanTalk]['reply'] {
  return replyOrBroken(() => answered(question));
}

function answered(question: Question<PlanTalk>): PlanTalk[keyof PlanTalk]['reply'] {
  switch (question.kind) {
    case 'sheet':
      return replyOf(sheetOfCode(question.code), '');
  }
}
