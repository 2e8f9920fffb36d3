// What the screens about children ask the worker that knows of sheets by their codes.
import type { Reply, Shown } from '../making/protocol.ts';

/** Questions to the planner, each with its reply. */
export interface PlanTalk {
  /** The sheet that a code stands for. */
  readonly sheet: { readonly ask: { readonly code: string }; readonly reply: Reply<Shown> };
}
