// The screen's side of a talk with a worker, so that the screen never waits.
import { followPictures, picturesNow } from '../pictures/pictures-now.ts';
import { languageNow } from '../speaking/language-now.ts';
import type { Answer, Asker, Talk } from './talk.ts';

/** Replies that are waited for, by the ids of their questions. */
type Waiting<T extends Talk<T>> = Map<number, (reply: T[keyof T]['reply']) => void>;

/**
 * Asks a worker that is started at once, or with the first question. Where it does not start or breaks, what was asked of
 * it is replied to by `broken`, and the next question is asked of a new one.
 */
export function startAsking<T extends Talk<T>>(
  start: () => Worker,
  broken: (fault: string) => T[keyof T]['reply'],
  when: 'at-once' | 'when-asked' = 'when-asked',
): Asker<T> {
  const waiting: Waiting<T> = new Map();
  let worker: Worker | undefined;
  const begin = () => {
    const begun = start();
    begun.addEventListener('message', ({ data }: MessageEvent<Answer<T>>) => {
      waiting.get(data.id)?.(data.reply);
      waiting.delete(data.id);
    });
    begun.addEventListener('error', (event) => {
      begun.terminate();
      worker = undefined;
      const left = [...waiting.values()];
      waiting.clear();
      for (const settle of left) settle(broken(event.message || 'a worker did not start'));
    });
    if (picturesNow().length > 0) begun.postMessage({ ownPictures: picturesNow() });
    return begun;
  };
  if (when === 'at-once') worker = begin();
  followPictures(() => worker?.postMessage({ ownPictures: picturesNow() }));
  let asked = 0;
  return {
    ask: (kind, what) =>
      new Promise((settle) => {
        const id = ++asked;
        waiting.set(id, settle);
        worker ??= begin();
        worker.postMessage({ kind, id, language: languageNow(), ...what });
      }),
  };
}
