// Answers the questions of the screen with the core; never throws.
import type { Question } from '../asking/talk.ts';
import { answerChanges } from '../changing/answer-changes.ts';
import { gatherCatalogue } from './catalogue.ts';
import { measureOf } from './measure-of.ts';
import { notched } from './notched.ts';
import { openedFile } from './opened-file.ts';
import type { MakerTalk } from './protocol.ts';
import { replyOf, replyOrBroken } from './reply.ts';
import { entriesOfCode } from './sheet-of-code.ts';
import { inkedOn, show } from './show.ts';

export function answer(question: Question<MakerTalk>): MakerTalk[keyof MakerTalk]['reply'] {
  return replyOrBroken(() => answered(question));
}

function answered(question: Question<MakerTalk>): MakerTalk[keyof MakerTalk]['reply'] {
  switch (question.kind) {
    case 'catalogue':
      return { ok: true, value: gatherCatalogue() };
    case 'show':
      return replyOf(show(question, question.view, question), question.entries.activity);
    case 'inked':
      return replyOf(inkedOn(question, question.sheet), question.entries.activity);
    case 'notch':
      return replyOf(notched(question.entries, question.direction), question.entries.activity);
    case 'open':
      return replyOf(entriesOfCode(question.code), '');
    case 'openFile':
      return openedFile(question.text);
    case 'measure':
      return replyOf(measureOf(question.text, question.paper), '');
    default:
      return answerChanges(question);
  }
}
