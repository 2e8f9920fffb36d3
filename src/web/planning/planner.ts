// Talks to the worker that knows of sheets by their codes; it starts with the first question.
import { startAsking } from '../asking/start-asking.ts';
import type { Asker } from '../asking/talk.ts';
import { brokenReply } from '../making/broken-reply.ts';
import type { PlanTalk } from './protocol.ts';

export type Planner = Asker<PlanTalk>;

export function startPlanner(): Planner {
  return startAsking<PlanTalk>(
    () => new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' }),
    brokenReply,
  );
}
