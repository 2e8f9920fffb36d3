// A reply always comes, also where the worker does not start or breaks; the next question finds a new one.
import { expect, test } from 'vitest';
import { lendPictures } from '../pictures/pictures-now.ts';
import { startAsking } from './start-asking.ts';

interface Talk {
  readonly double: { readonly ask: { readonly number: number }; readonly reply: number | string };
}

interface Posted {
  readonly id?: number;
  readonly number?: number;
}

/** A worker that answers when it is told to. */
class SlowWorker extends EventTarget {
  readonly posted: Posted[] = [];
  isEnded = false;
  postMessage(message: Posted) {
    this.posted.push(message);
  }
  terminate() {
    this.isEnded = true;
  }
  answer() {
    const { id, number = 0 } = this.posted.at(-1) ?? {};
    this.dispatchEvent(new MessageEvent('message', { data: { id, reply: 2 * number } }));
  }
  breakDown() {
    this.dispatchEvent(new Event('error'));
  }
}

function slowAsker(when: 'at-once' | 'when-asked') {
  const workers: SlowWorker[] = [];
  const start = () => {
    workers.push(new SlowWorker());
    return workers.at(-1) as unknown as Worker;
  };
  return { workers, asker: startAsking<Talk>(start, () => 'broken', when) };
}

test('a worker starts at once or with the first question, as it was wanted', () => {
  expect(slowAsker('at-once').workers).toHaveLength(1);
  const { workers, asker } = slowAsker('when-asked');
  expect(workers).toHaveLength(0);
  void asker.ask('double', { number: 1 });
  expect(workers).toHaveLength(1);
});

test('all questions to a worker that breaks are replied to, and the next is asked of a new one', async () => {
  const { workers, asker } = slowAsker('when-asked');
  const both = Promise.all([
    asker.ask('double', { number: 1 }),
    asker.ask('double', { number: 2 }),
  ]);
  workers[0]?.breakDown();
  expect(await both).toEqual(['broken', 'broken']);
  expect(workers[0]?.isEnded).toBe(true);
  const next = asker.ask('double', { number: 3 });
  workers[1]?.answer();
  expect(await next).toBe(6);
});

test('a new worker is told of the pictures before it is asked anything', () => {
  lendPictures([{ outline: 'M0 0L1 0L1 1Z', parts: [['#ff0000', 'M0 0L1 0L1 1Z']] }]);
  const { workers, asker } = slowAsker('at-once');
  void asker.ask('double', { number: 1 });
  workers[0]?.breakDown();
  void asker.ask('double', { number: 2 });
  for (const { posted } of workers) {
    expect(posted.map((message) => 'ownPictures' in message)).toEqual([true, false]);
  }
});
