// Talks to the worker that makes and proves single sheets, so that the screen never waits.
import type { Answer, Asked, MakerTalk, Question } from './protocol.ts';

export interface Maker {
  /** Asks one question; a reply always comes, in the order of the questions. */
  readonly ask: <K extends Asked>(
    kind: K,
    what: MakerTalk[K]['ask'],
  ) => Promise<MakerTalk[K]['reply']>;
}

type Settle = (reply: MakerTalk[Asked]['reply']) => void;

export function startMaker(): Maker {
  const worker = new Worker(new URL('./make.worker.ts', import.meta.url), { type: 'module' });
  const waiting = new Map<number, Settle>();
  worker.addEventListener('message', (event: MessageEvent<Answer>) => {
    waiting.get(event.data.id)?.(event.data.reply);
    waiting.delete(event.data.id);
  });
  let asked = 0;
  return {
    ask: (kind, what) =>
      new Promise((settle) => {
        const id = ++asked;
        waiting.set(id, settle as Settle);
        worker.postMessage({ kind, id, ...what } as Question);
      }),
  };
}
