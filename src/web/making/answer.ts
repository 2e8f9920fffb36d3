// Answers the questions of the screen with the core; never throws.
import { accept, type Result } from '../../base/index.ts';
import { readCode } from '../../sheets/index.ts';
import type { Entries } from '../recipe/entries.ts';
import { words } from '../words.ts';
import { gatherCatalogue } from './catalogue.ts';
import { notched } from './notched.ts';
import { objectionsOf } from './objections-of.ts';
import type { Asked, MakerTalk, Question, Reply } from './protocol.ts';
import { show } from './show.ts';

export function answer(question: Question): MakerTalk[Asked]['reply'] {
  try {
    switch (question.kind) {
      case 'catalogue':
        return accept(gatherCatalogue()) as Reply<ReturnType<typeof gatherCatalogue>>;
      case 'show':
        return replyOf(
          show(question.entries, question.view, question.sheet),
          question.entries.activity,
        );
      case 'notch':
        return replyOf(notched(question.entries, question.direction), question.entries.activity);
      case 'open':
        return replyOf(entriesOfCode(question.code), '');
    }
  } catch (defect) {
    const detail = defect instanceof Error ? defect.message : String(defect);
    return { ok: false, objections: [{ control: '', sentence: words.defect(detail) }] };
  }
}

function replyOf<T>(result: Result<T>, activity: string): Reply<T> {
  return result.ok
    ? { ok: true, value: result.value }
    : { ok: false, objections: objectionsOf(result.refusals, activity) };
}

/** A pack of the one sheet that the code stands for. */
function entriesOfCode(code: string): Result<Entries> {
  const read = readCode(code);
  if (!read.ok) return read;
  const { activity, step, values, seed, tasks, page, print } = read.value;
  return accept({
    activity,
    step,
    changes: values,
    tasks,
    sheets: 1,
    seed,
    first: seed,
    paper: page.paper,
    orientation: page.orientation,
    print,
  });
}
