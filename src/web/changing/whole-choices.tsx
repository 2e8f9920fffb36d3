// What can be done with a box, an entry of a key or the like as one: a small drawer beside it.
import type { RefObject } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Deed, Spot } from '../../editing/index.ts';
import type { Maker } from '../making/maker.ts';
import { Drawer, Facts, Named, SwapChip, useOffers } from './change-choices.tsx';
import type { HeldWhole } from './change-talk.ts';
import type { Changing } from './use-changing.ts';
import { words } from './words.ts';

export interface WholeChoicesProps {
  readonly maker: Maker;
  readonly changing: Changing;
  readonly task: number;
  readonly whole: HeldWhole;
  readonly trigger: RefObject<HTMLElement | null>;
  readonly onSwap: () => void;
  /** Goes on to one of its places. */
  readonly onPlace: (spot: Spot) => void;
  readonly onClose: () => void;
}

export function WholeChoices(props: WholeChoicesProps) {
  const { maker, changing, task, whole, trigger, onSwap, onPlace, onClose } = props;
  const [first = 0] = whole.places;
  const at = { task, place: first };
  const offers = useOffers(maker, changing, at);
  const empty = changing.held.tasks[task]?.empty ?? [];
  const inIt = empty.filter(({ place }) => whole.places.includes(place));
  const act = (deed: Deed) => {
    onClose();
    changing.act(deed);
  };
  // An item of its own list, and one more of what it holds; which figure goes is told at that figure.
  const shapes = offers?.shapes.filter(
    ({ change, depth }) => depth < whole.path.length || change.kind === 'add',
  );
  const { places, isLocked } = whole;
  return (
    <Drawer title={whole.name} trigger={trigger} onClose={onClose}>
      <div className="chips">
        <Button
          className="chip"
          onPress={() => act({ kind: 'lock-all', task, places, isLocked: !isLocked })}
        >
          {isLocked ? words.unlockAll : words.lockAll}
        </Button>
        <SwapChip onSwap={onSwap} onClose={onClose} />
        {shapes?.map(({ label, change }) => (
          <Button key={label} className="chip" onPress={() => act({ kind: 'shape', at, change })}>
            {label}
          </Button>
        ))}
      </div>
      {offers === undefined ? <p className="help">{words.loading}</p> : null}
      {offers === undefined ? null : <Facts offers={offers} at={at} act={act} />}
      {inIt.length === 0 ? null : (
        <Named label={words.emptyInIt}>
          {inIt.map(({ place, name }) => (
            <Button key={place} className="chip" onPress={() => onPlace({ task, place })}>
              {name}
            </Button>
          ))}
        </Named>
      )}
    </Drawer>
  );
}
