// The worker behind the screen: answers each question with the core.
import { answer } from './answer.ts';
import type { Answer, Question } from './protocol.ts';

self.addEventListener('message', (event: MessageEvent<Question>) => {
  const reply: Answer = { id: event.data.id, reply: answer(event.data) };
  self.postMessage(reply);
});
