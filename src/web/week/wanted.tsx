// What the week is planned for: the children, the days, skills to come more often, and the wishes for all plans.
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Child } from '../../records/index.ts';
import { Chips } from '../children/chips.tsx';
import { useGround } from '../children/use-ground.ts';
import { Fold } from '../fold.tsx';
import { WishesForm } from '../planning/wishes-form.tsx';
import { words as planning } from '../planning/words.ts';
import type { WeekInView } from './use-week.ts';
import { words } from './words.ts';

export interface WantedProps {
  readonly week: WeekInView;
  /** Whether what is in the house was counted. */
  readonly isCounted: boolean;
  /** Folded away where the week is planned already. */
  readonly isPlanned: boolean;
  /** What can be done with it. */
  readonly children: ReactNode;
}

export function Wanted({ week, isPlanned, isCounted, children }: WantedProps) {
  const { chosen, wishes, setWishes, weekWishes, setWeekWishes } = week;
  const [isOpen, setOpen] = useState<boolean>();
  const names = chosen.map(({ nickname }) => nickname);
  return (
    <Fold
      className="wanted drawer-front"
      isExpanded={isOpen ?? !isPlanned}
      onExpandedChange={setOpen}
      title={
        names.length === 0
          ? words.wanted
          : words.summary(names, weekWishes.weekdays, wishes.minutes)
      }
      level={3}
    >
      <div className="wanted-fields">
        <ChildChips week={week} />
        <Chips
          label={words.weekdays}
          names={words.dayNames}
          chosen={weekWishes.weekdays}
          several
          isNeeded
          onChange={(weekdays) => setWeekWishes({ ...weekWishes, weekdays })}
        />
        <Chips
          label={words.favoured}
          help={words.favouredHelp}
          names={planning.skills}
          chosen={weekWishes.favoured}
          several
          onChange={(favoured) => setWeekWishes({ ...weekWishes, favoured })}
        />
        <WishesForm wishes={wishes} onChange={setWishes} isCounted={isCounted} />
      </div>
      {children}
    </Fold>
  );
}

function ChildChips({ week: { chosen, choose } }: { readonly week: WeekInView }) {
  const { children, child } = useGround();
  const only = chosen[0] ?? child;
  const idsOf = (those: readonly Child[]) => those.map(({ id }) => id);
  return (
    <div className="child-chips">
      <Chips
        label={words.children}
        names={Object.fromEntries(children.map(({ id, nickname }) => [id, nickname]))}
        chosen={idsOf(chosen)}
        several
        onChange={choose}
      />
      {children.length < 3 ? null : (
        <div className="row outward">
          <Button
            className="quiet"
            isDisabled={chosen.length === children.length}
            onPress={() => choose(idsOf(children))}
          >
            {words.all}
          </Button>
          {only === undefined ? null : (
            <Button
              className="quiet"
              isDisabled={chosen.length === 1}
              onPress={() => choose([only.id])}
            >
              {words.only(only.nickname)}
            </Button>
          )}
        </div>
      )}
    </div>
  );
}
