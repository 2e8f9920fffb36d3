// How the sheets come about: printed, half-made or by hand; by hand also in the layout that is quickest.
import { memo } from 'react';
import { Chips } from '../children/chips.tsx';
import type { House } from '../house/house.ts';
import { withMade } from '../recipe/entries.ts';
import type { Edit } from '../recipe/use-recipe.ts';
import { words } from '../words.ts';

type Way = keyof typeof words.madeWays;

export interface HowMadeProps {
  readonly made: string | undefined;
  readonly quick: string | undefined;
  readonly edit: Edit;
  readonly house: House;
}

/** Drawn anew only when it is to show something else. */
export const HowMade = memo(({ made, quick, edit, house }: HowMadeProps) => {
  const way: Way = made === 'half-made' || made === 'by-hand' ? made : 'printed';
  return (
    <div className="how-made">
      <Chips
        label={words.made}
        help={words.madeHelp[way]}
        names={words.madeWays}
        chosen={[way]}
        isNeeded
        onChange={([next]) => next && edit((now) => withMade(now, next, now.quick))}
      />
      {house.stock?.printer === 'none' && way !== 'by-hand' ? (
        <p className="help">{words.noPrinter}</p>
      ) : null}
      {way === 'by-hand' ? (
        <Chips
          label={words.madeLayout}
          names={words.madeLayouts}
          chosen={[quick === 'yes' ? 'yes' : 'no']}
          isNeeded
          onChange={([next]) => next && edit((now) => withMade(now, way, next))}
        />
      ) : null}
    </div>
  );
});
