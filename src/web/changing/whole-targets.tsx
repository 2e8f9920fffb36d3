// A handle at each box, entry of a key and the like, by which it is chosen as one.
import { Fragment } from 'react';
import { Button } from 'react-aria-components/Button';
import { styleOf } from '../table/target-style.ts';
import type { HeldTask, HeldWhole } from './change-talk.ts';
import type { Handle } from './handles.ts';
import { words } from './words.ts';

/** One of the wholes of a task, by its index among them. */
export interface WholeSpot {
  readonly task: number;
  readonly index: number;
}

export function wholeAt(
  tasks: readonly HeldTask[],
  { task, index }: WholeSpot,
): HeldWhole | undefined {
  return tasks[task]?.wholes[index];
}

export interface WholeTargetsProps {
  /** Of the task, from 0. */
  readonly number: number;
  readonly wholes: readonly HeldWhole[];
  readonly targets: readonly Handle[];
  readonly chosen: WholeSpot | undefined;
  readonly onChoose: (spot: WholeSpot, element: HTMLElement | null) => void;
}

export function WholeTargets({ number, wholes, targets, chosen, onChoose }: WholeTargetsProps) {
  return targets.map(({ index, frame, box }) => (
    <Fragment key={index}>
      <Button
        className="whole-target"
        style={styleOf(box)}
        aria-label={words.target(
          number + 1,
          wholes[index]?.name ?? '',
          wholes[index]?.isLocked ? ['locked'] : [],
        )}
        data-chosen={chosen?.task === number && chosen.index === index}
        onPress={({ target }) =>
          onChoose({ task: number, index }, target instanceof HTMLElement ? target : null)
        }
      />
      <span className="whole-frame" style={styleOf(frame)} aria-hidden="true" />
    </Fragment>
  ));
}
