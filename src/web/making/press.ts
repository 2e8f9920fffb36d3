// One run of the press: starts its worker, passes its news on, ends it when done or called off.
import type { PressNews, PressOrder } from './protocol.ts';

const LAST_NEWS: readonly PressNews['kind'][] = [
  'pdf',
  'zip',
  'pack',
  'pages',
  'refused',
  'broken',
];

/** Starts a run and returns the way to call it off. */
export function startPress(order: PressOrder, hear: (news: PressNews) => void): () => void {
  const worker = new Worker(new URL('./press.worker.ts', import.meta.url), { type: 'module' });
  worker.addEventListener('message', (event: MessageEvent<PressNews>) => {
    if (LAST_NEWS.includes(event.data.kind)) worker.terminate();
    hear(event.data);
  });
  worker.addEventListener('error', (event) => {
    worker.terminate();
    hear({ kind: 'broken', detail: event.message || 'the press did not start' });
  });
  worker.postMessage(order);
  return () => worker.terminate();
}
