// Talks to the worker that makes and proves single sheets; it starts at once, for the first page.
import { startAsking } from '../asking/start-asking.ts';
import type { Asker } from '../asking/talk.ts';
import { brokenReply } from './broken-reply.ts';
import type { MakerTalk } from './protocol.ts';

export type Maker = Asker<MakerTalk>;

export function startMaker(): Maker {
  return startAsking<MakerTalk>(
    () => new Worker(new URL('./make.worker.ts', import.meta.url), { type: 'module' }),
    brokenReply,
    'at-once',
  );
}
