// Keeping plans: at once, all together, and what could not be kept is held until it can.
import { z } from 'zod';
import type { Draft } from '../../records/index.ts';
import { useGround } from '../children/use-ground.ts';
import { objectionOf } from '../children/use-records.ts';
import { type SaidState, useSaid } from '../children/use-said.ts';
import { useKept } from '../offline/kept.ts';

/** Plans that are on the screen only, and why. */
export interface Unkept {
  readonly drafts: readonly Draft[];
  readonly text: string;
  readonly objection: string;
}

/** What the drafts hold is looked at by the store when they are kept. */
const unkeptSchema: z.ZodType<Unkept> = z.object({
  drafts: z.array(z.custom<Draft>((draft) => draft instanceof Object)),
  text: z.string(),
  objection: z.string(),
});

function readUnkept(left: unknown): Unkept | undefined {
  const read = unkeptSchema.safeParse(left);
  return read.success ? read.data : undefined;
}

export interface KeepingState extends SaidState {
  readonly unkept: Unkept | undefined;
  /** Keeps the drafts, after those that could not be kept before, and says the text with a way to take them back. */
  readonly keep: (drafts: readonly Draft[], text: string) => Promise<void>;
}

export function useKeeping(): KeepingState {
  const { append } = useGround();
  const { say, ...told } = useSaid();
  const [unkept, setUnkept] = useKept('plans not kept', readUnkept);
  const keep = async (drafts: readonly Draft[], text: string) => {
    const kept = await append(drafts);
    if (kept.ok) {
      setUnkept(undefined);
      say({ text, undo: kept.value.map(({ id }) => id) });
    } else {
      setUnkept({ drafts, text, objection: await objectionOf(kept) });
    }
  };
  return {
    ...told,
    say,
    unkept,
    keep: (drafts, text) => keep([...(unkept?.drafts ?? []), ...drafts], text),
  };
}
