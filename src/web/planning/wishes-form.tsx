// The wishes for plans, folded away until wanted: how long, on what paper, and with what is in the house.

import type { ReactNode } from 'react';
import { HOME_PAPERS } from '../../page/index.ts';
import { Chips } from '../children/chips.tsx';
import '../look/wishes.css';
import { Fold } from '../fold.tsx';
import { hashOf } from '../place-names.ts';
import { Pieces } from '../speaking/pieces-shown.tsx';
import { words as shell } from '../words.ts';
import type { PlanWishes } from './cards.ts';
import { MINUTES, THINGS, withThings } from './wishes.ts';
import { words } from './wishes-words.ts';

export interface WishesFormProps {
  readonly wishes: PlanWishes;
  readonly onChange: (wishes: PlanWishes) => void;
  /** Whether the things were counted, which then says what there is. */
  readonly isCounted: boolean;
  /** What a screen has to say of its plans and wishes, such as that a kept plan stands. */
  readonly children?: ReactNode;
}

export function WishesForm({ wishes, onChange, isCounted, children }: WishesFormProps) {
  const { minutes, page, print, supplies = THINGS } = wishes;
  return (
    <Fold className="more" title={words.wishes} level={3}>
      <div className="wishes">
        <Chips
          label={words.minutes}
          help={words.minutesHelp}
          names={words.minuteNames}
          chosen={MINUTES.filter((each) => each === minutes).map((each) => `${each}` as const)}
          isNeeded
          onChange={([chosen]) => onChange({ ...wishes, minutes: Number(chosen) })}
        />
        <Chips
          label={words.paper}
          names={words.papers}
          chosen={HOME_PAPERS.filter((paper) => paper === page.paper)}
          isNeeded
          onChange={([paper = page.paper]) => onChange({ ...wishes, page: { ...page, paper } })}
        />
        <Chips
          label={words.print}
          help={words.printHelp}
          names={words.prints}
          chosen={[print]}
          isNeeded
          onChange={([chosen = print]) => onChange({ ...wishes, print: chosen })}
        />
        {isCounted ? (
          <p className="help">
            <Pieces
              pieces={words.counted}
              controls={{ supplies: <a href={hashOf('supplies')}>{shell.places.supplies}</a> }}
            />
          </p>
        ) : (
          <Chips
            label={words.things}
            help={words.thingsHelp}
            names={words.thingNames}
            chosen={supplies}
            several
            onChange={(things) => onChange(withThings(wishes, things))}
          />
        )}
        {children}
      </div>
    </Fold>
  );
}
