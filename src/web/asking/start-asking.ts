// The screen's side of a talk with a worker, so that the screen never waits.
import { followPictures, picturesNow } from '../pictures/pictures-now.ts';
import { languageNow } from '../speaking/language-now.ts';
import type { Answer, Asker, Talk } from './talk.ts';

export function startAsking<T extends Talk<T>>(worker: Worker): Asker<T> {
  const waiting = new Map<number, (reply: T[keyof T]['reply']) => void>();
  worker.addEventListener('message', (event: MessageEvent<Answer<T>>) => {
    waiting.get(event.data.id)?.(event.data.reply);
    waiting.delete(event.data.id);
  });
  const tell = () => worker.postMessage({ ownPictures: picturesNow() });
  if (picturesNow().length > 0) tell();
  followPictures(tell);
  let asked = 0;
  return {
    ask: (kind, what) =>
      new Promise((settle) => {
        const id = ++asked;
        waiting.set(id, settle);
        worker.postMessage({ kind, id, language: languageNow(), ...what });
      }),
  };
}

/** Starts no worker before the first question. */
export function startAskingLater<T extends Talk<T>>(start: () => Worker): Asker<T> {
  let asker: Asker<T> | undefined;
  return {
    ask: (kind, what) => {
      asker ??= startAsking<T>(start());
      return asker.ask(kind, what);
    },
  };
}
