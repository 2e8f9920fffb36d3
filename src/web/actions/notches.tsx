// Turns from the sheet on the table to the next one: another like it, or a notch easier or harder.
import { memo, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Maker } from '../making/maker.ts';
import type { Direction } from '../making/protocol.ts';
import { type Entries, withSeed, withValues } from '../recipe/entries.ts';
import { newSeed } from '../recipe/use-recipe.ts';
import { useLatestCall } from '../use-latest-call.ts';
import { words } from '../words.ts';

export interface NotchesProps {
  readonly maker: Maker;
  readonly entries: Entries;
  readonly turn: (entries: Entries) => void;
}

/** What came of looking for a notch, for the entries it was looked for. */
interface Outcome {
  readonly entries: Entries;
  readonly words: string;
}

export function Notches({ maker, entries, turn }: NotchesProps) {
  const [outcome, setOutcome] = useState<Outcome>();
  const [isLooking, setLooking] = useState(false);
  const entriesNow = useLatestCall(() => entries);
  const another = useLatestCall(() => turn(withSeed(entries, newSeed())));
  const move = useLatestCall(async (direction: Direction) => {
    setLooking(true);
    const reply = await maker.ask('notch', { entries, direction });
    setLooking(false);
    if (!reply.ok) return setOutcome({ entries, words: words.noNotch[direction] });
    // What was changed meanwhile stays; where that is what the notch was looked for in, there is none to be had of it.
    const { step, changes } = reply.value;
    const now = entriesNow();
    if (isLike(now, entries)) turn(withValues(now, step, changes));
  });
  return (
    <div>
      <Turns isLooking={isLooking} onAnother={another} onMove={move} />
      <p className="outcome" aria-live="polite">
        {outcome?.entries === entries ? outcome.words : ''}
      </p>
    </div>
  );
}

/** Whether both ask the same of the child, whatever it is printed on. */
function isLike(one: Entries, other: Entries): boolean {
  const textOf = ({ activity, step, changes }: Entries) =>
    JSON.stringify([activity, step, changes]);
  return textOf(one) === textOf(other);
}

interface TurnsProps {
  readonly isLooking: boolean;
  readonly onAnother: () => void;
  readonly onMove: (direction: Direction) => Promise<void>;
}

/** Drawn anew only when it is to show something else. */
const Turns = memo(({ isLooking, onAnother, onMove }: TurnsProps) => (
  <div className="row notches">
    <Button className="plain" onPress={onAnother}>
      {words.another}
    </Button>
    <Button className="plain" isPending={isLooking} onPress={() => void onMove('easier')}>
      {words.easier}
    </Button>
    <Button className="plain" isPending={isLooking} onPress={() => void onMove('harder')}>
      {words.harder}
    </Button>
  </div>
));
