// Places of the sheet at which nothing stands, by their names.
import { Button } from 'react-aria-components/Button';
import type { Spot } from '../../editing/index.ts';
import { Fold } from '../fold.tsx';
import type { HeldTask } from './change-talk.ts';
import { words } from './words.ts';

export interface EmptyPlacesProps {
  readonly tasks: readonly HeldTask[];
  readonly onChoose: (spot: Spot, element: HTMLElement | null) => void;
}

/** Where nothing is drawn there is nothing to tap, so that these places are chosen by their names. */
export function EmptyPlaces({ tasks, onChoose }: EmptyPlacesProps) {
  if (tasks.every(({ empty }) => empty.length === 0)) return null;
  return (
    <Fold level={3} title={words.emptyPlaces} className="change-empty">
      <div className="chips">
        {tasks.flatMap(({ empty }, task) =>
          empty.map(({ place, name }) => (
            <Button
              // biome-ignore lint/suspicious/noArrayIndexKey: tasks have no name but their place
              key={`${task} ${place}`}
              className="chip"
              onPress={({ target }) =>
                onChoose({ task, place }, target instanceof HTMLElement ? target : null)
              }
            >
              {words.target(task + 1, name)}
            </Button>
          )),
        )}
      </div>
    </Fold>
  );
}
