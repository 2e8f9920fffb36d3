// Workers that take units from a source until it is empty, whatever the order in which they are done.
import type { Worker } from 'node:worker_threads';

/** Where units come from and results go; called one at a time. */
export interface Source<Ask, Answer> {
  /** The next unit for the worker of this number; `undefined`: none for now, and none at all once every unit that was given is done. */
  readonly next: (worker: number) => Ask | undefined;
  readonly done: (ask: Ask, answer: Answer) => void;
  /** The worker ended in the middle of the unit, for this reason if it gave one; another takes its place. */
  readonly lost: (ask: Ask, reason: string | undefined) => void;
}

/** Ends when every unit is done and every worker has ended. */
export function runPool<Ask, Answer>(
  count: number,
  open: () => Worker,
  source: Source<Ask, Answer>,
): Promise<void> {
  const idle: Worker[] = [];
  const busy = new Map<Worker, Ask>();
  const reasons = new Map<Worker, string>();
  return new Promise((resolve) => {
    const hire = (): void => {
      const worker = open();
      worker.on('message', (answer: Answer) => {
        const ask = busy.get(worker);
        busy.delete(worker);
        idle.push(worker);
        if (ask !== undefined) source.done(ask, answer);
        hand();
      });
      worker.on('error', (error) => reasons.set(worker, error.message));
      worker.on('exit', () => {
        const ask = busy.get(worker);
        if (idle.includes(worker)) idle.splice(idle.indexOf(worker), 1);
        if (ask === undefined) return;
        busy.delete(worker);
        source.lost(ask, reasons.get(worker));
        hire();
        hand();
      });
      idle.push(worker);
    };
    const hand = (): void => {
      for (let worker = idle[0]; worker; worker = idle[0]) {
        const ask = source.next(worker.threadId);
        if (ask === undefined) break;
        idle.shift();
        busy.set(worker, ask);
        worker.postMessage(ask);
      }
      if (busy.size > 0) return;
      void Promise.all(idle.splice(0).map((worker) => worker.terminate())).then(() => resolve());
    };
    for (let number = 0; number < count; number++) hire();
    hand();
  });
}
