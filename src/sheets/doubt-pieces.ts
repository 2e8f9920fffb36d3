// What the adult's page says of tasks that a person changed and that are not certain.
import { activityOf, type Language } from '../activities/index.ts';
import { doubtSentences } from '../editing/index.ts';
import { bullets, heading } from '../page/index.ts';
import { SMALL_EM_MM, section } from './adult-blocks.ts';
import type { Piece } from './adult-flow.ts';
import type { Pack } from './pack.ts';
import { pageWords } from './page-catalogue.ts';

/** One piece that names each such task and why; none where all tasks are certain. */
export function doubtPieces({ sheets }: Pack, language: Language): readonly Piece[] {
  const words = pageWords(language).adult;
  const said = sheets.flatMap(({ spec, tasks, doubts = [] }, index) =>
    doubts.map(({ task, reason }) => {
      const activity = activityOf(spec.activity);
      const why = doubtSentences(activity, tasks[task]?.printed, language);
      return words.doubt(index + 1, task + 1, reason, why);
    }),
  );
  if (said.length === 0) return [];
  return [(width) => section([heading(words.doubts, width, 2), bullets(said, width, SMALL_EM_MM)])];
}
