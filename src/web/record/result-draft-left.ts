// The draft of a record that was left unsaved when the page was loaded anew.
import { z } from 'zod';
import { HELP_LEVELS, MOODS, OUTCOMES } from '../../records/index.ts';
import { emptyDraft, type ResultDraft } from './result-draft.ts';

/** By task from 0; as JSON has it the number of the task is text. */
const byTask = <T extends z.ZodType>(of: T) => z.record(z.coerce.number<string>().int(), of);

const draftSchema: z.ZodType<ResultDraft> = z.object({
  outcomes: byTask(z.enum(OUTCOMES).exclude(['not-tried'])),
  isAtOnce: z.boolean(),
  rightTapped: byTask(z.literal(true)),
  tapped: byTask(z.array(z.object({ place: z.number(), label: z.string() }))),
  instead: byTask(z.string()),
  day: z.string(),
  help: z.array(z.enum(HELP_LEVELS)),
  mood: z.array(z.enum(MOODS)),
  minutes: z.string(),
  note: z.string(),
});

/** The draft that was left; an empty one of the day where none was, or none that can be read. */
export function readResultDraft(left: unknown, day: string): ResultDraft {
  const read = draftSchema.safeParse(left);
  return read.success ? read.data : emptyDraft(day);
}

/** Whether more was noted than how the tasks went. */
export function isMoreNoted({ instead, help, mood, minutes, note }: ResultDraft): boolean {
  const written = [...Object.values(instead), minutes, note];
  return help.length > 0 || mood.length > 0 || written.some((text) => text !== '');
}
