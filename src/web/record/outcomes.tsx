// How it went: one tap for the whole sheet, or one for each task.

import { Chips } from '../children/chips.tsx';
import type { Shown } from '../making/protocol.ts';
import { allAs, type ResultDraft, wholeOf } from './result-draft.ts';
import { type Tried, words } from './words.ts';

export interface OutcomesProps {
  readonly sheet: Shown;
  readonly draft: ResultDraft;
  readonly change: (part: Partial<ResultDraft>) => void;
}

const { 'not-tried': _, ...TRIED } = words.outcomes;

export function Outcomes({ sheet, draft, change }: OutcomesProps) {
  const whole = wholeOf(draft, sheet.tasks);
  return (
    <>
      <Chips<Tried>
        label={words.whole}
        names={words.wholes}
        chosen={whole === undefined ? [] : [whole]}
        onChange={([outcome]) =>
          change({ outcomes: outcome === undefined ? {} : allAs(outcome, sheet.tasks) })
        }
      />
      <fieldset className="tasks">
        <legend className="field-label">{words.eachTask}</legend>
        {Array.from({ length: sheet.tasks }, (_, task) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: tasks have no name but their place
          <TaskOutcome key={task} task={task} draft={draft} change={change} />
        ))}
        <p className="help">{words.untouched}</p>
      </fieldset>
    </>
  );
}

interface TaskOutcomeProps extends Pick<OutcomesProps, 'draft' | 'change'> {
  readonly task: number;
}

function TaskOutcome({ task, draft, change }: TaskOutcomeProps) {
  const outcome = draft.outcomes[task];
  return (
    <div className="task">
      <Chips<Tried>
        label={words.task(task + 1)}
        names={TRIED}
        chosen={outcome === undefined ? [] : [outcome]}
        onChange={([next]) => {
          const { [task]: _, ...others } = draft.outcomes;
          change({ outcomes: next === undefined ? others : { ...others, [task]: next } });
        }}
      />
    </div>
  );
}
