// The worker's side of a talk: each question is answered when it comes.
import { printIn } from '../making/print-in.ts';
import { knowTold } from '../pictures/know-told.ts';
import type { PicturesTold } from '../pictures/pictures-now.ts';
import type { Answer, Question, Talk } from './talk.ts';

/** Call it once in a worker. What must first be fetched is answered when it is there. */
export function answerAll<T extends Talk<T>>(
  answer: (question: Question<T>) => T[keyof T]['reply'] | Promise<T[keyof T]['reply']>,
): void {
  self.addEventListener('message', async (event: MessageEvent<Question<T> | PicturesTold>) => {
    if ('ownPictures' in event.data) return knowTold(event.data);
    const question = event.data;
    await printIn(question.language);
    const reply: Answer<T> = { id: question.id, reply: await answer(question) };
    self.postMessage(reply);
  });
}
