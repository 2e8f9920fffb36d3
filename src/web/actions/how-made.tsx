// How the sheets come about: printed, half-made or by hand; by hand also in the layout that is quickest.
import { Chips } from '../children/chips.tsx';
import type { House } from '../house/house.ts';
import { type Entries, withMade } from '../recipe/entries.ts';
import { words } from '../words.ts';

type Way = keyof typeof words.madeWays;

export interface HowMadeProps {
  readonly entries: Entries;
  readonly edit: (entries: Entries) => void;
  readonly house: House;
}

export function HowMade({ entries, edit, house }: HowMadeProps) {
  const way: Way =
    entries.made === 'half-made' || entries.made === 'by-hand' ? entries.made : 'printed';
  return (
    <div className="how-made">
      <Chips
        label={words.made}
        help={words.madeHelp[way]}
        names={words.madeWays}
        chosen={[way]}
        isNeeded
        onChange={([made]) => made && edit(withMade(entries, made, entries.quick))}
      />
      {house.stock?.printer === 'none' && way !== 'by-hand' ? (
        <p className="help">{words.noPrinter}</p>
      ) : null}
      {way === 'by-hand' ? (
        <Chips
          label={words.madeLayout}
          names={words.madeLayouts}
          chosen={[entries.quick === 'yes' ? 'yes' : 'no']}
          isNeeded
          onChange={([quick]) => quick && edit(withMade(entries, way, quick))}
        />
      ) : null}
    </div>
  );
}
