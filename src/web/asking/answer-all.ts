// The worker's side of a talk: each question is answered when it comes.
import type { Answer, Question, Talk } from './talk.ts';

/** Call it once in a worker. */
export function answerAll<T extends Talk<T>>(
  answer: (question: Question<T>) => T[keyof T]['reply'],
): void {
  self.addEventListener('message', (event: MessageEvent<Question<T>>) => {
    const reply: Answer<T> = { id: event.data.id, reply: answer(event.data) };
    self.postMessage(reply);
  });
}
