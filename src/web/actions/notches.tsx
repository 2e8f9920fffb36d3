// Turns from the sheet on the table to the next one: another like it, or a notch easier or harder.
import { Button } from 'react-aria-components/Button';
import { atStep, type Entries, withSeed } from '../recipe/entries.ts';
import { newSeed } from '../recipe/use-recipe.ts';
import { words } from '../words.ts';

export interface NotchesProps {
  readonly entries: Entries;
  readonly steps: number;
  readonly turn: (entries: Entries) => void;
}

export function Notches({ entries, steps, turn }: NotchesProps) {
  const { step } = entries;
  return (
    <div className="row notches">
      <Button className="plain" onPress={() => turn(withSeed(entries, newSeed()))}>
        {words.another}
      </Button>
      <Button
        className="plain"
        isDisabled={step <= 1}
        onPress={() => turn(atStep(entries, step - 1))}
      >
        {words.easier}
      </Button>
      <Button
        className="plain"
        isDisabled={step >= steps}
        onPress={() => turn(atStep(entries, step + 1))}
      >
        {words.harder}
      </Button>
    </div>
  );
}
