// How it went: one tap for the whole sheet, or one for each task; beside each what was tapped on its picture.
import { Button } from 'react-aria-components/Button';
import { Chips } from '../children/chips.tsx';
import type { Shown } from '../making/protocol.ts';
import type { TapTask } from '../planning/cards.ts';
import {
  allAs,
  notedIn,
  outcomeOf,
  type ResultDraft,
  tapWrong,
  taskAs,
  wholeOf,
} from './result-draft.ts';
import { notedWords } from './tap-names.ts';
import { type Tried, words } from './words.ts';

export interface OutcomesProps {
  readonly sheet: Shown;
  readonly taps: readonly TapTask[];
  readonly draft: ResultDraft;
  readonly change: (part: Partial<ResultDraft>) => void;
}

export function Outcomes({ sheet, taps, draft, change }: OutcomesProps) {
  const whole = wholeOf(draft, sheet.tasks);
  return (
    <>
      <Chips<Tried>
        label={words.whole}
        names={words.wholes}
        chosen={whole === undefined ? [] : [whole]}
        onChange={([outcome]) => change(allAs(outcome, sheet.tasks))}
      />
      <fieldset className="tasks">
        <legend className="field-label">{words.eachTask}</legend>
        {Array.from({ length: sheet.tasks }, (_, task) => (
          <TaskOutcome
            // biome-ignore lint/suspicious/noArrayIndexKey: tasks have no name but their place
            key={task}
            task={task}
            taps={taps[task]}
            draft={draft}
            change={change}
          />
        ))}
        <p className="help">{words.untouched}</p>
      </fieldset>
    </>
  );
}

interface TaskOutcomeProps extends Pick<OutcomesProps, 'draft' | 'change'> {
  readonly task: number;
  readonly taps: TapTask | undefined;
}

function TaskOutcome({ task, taps, draft, change }: TaskOutcomeProps) {
  const outcome = outcomeOf(draft, task);
  const noted = notedIn(draft, task);
  return (
    <div className="task">
      <Chips<Tried>
        label={words.task(task + 1)}
        names={words.tried}
        chosen={outcome === undefined ? [] : [outcome]}
        onChange={([next]) => change(taskAs(draft, task, next))}
      />
      {noted.length === 0 ? null : (
        <ul className="noted">
          {noted.map((each) => {
            const text = notedWords(taps, each);
            return (
              <li key={each.place}>
                <Button
                  className="quiet"
                  aria-label={words.takeBack(task + 1, text)}
                  onPress={() => change(tapWrong(draft, task, each))}
                >
                  {text}
                  <span aria-hidden="true">{'\u00a0×'}</span>
                </Button>
              </li>
            );
          })}
        </ul>
      )}
    </div>
  );
}
