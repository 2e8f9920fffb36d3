// Beside the sheets of the day: all that is to be laid out, getting them onto paper, and another plan.
import { Button } from 'react-aria-components/Button';
import { PressButtons } from '../actions/press-buttons.tsx';
import { UseLines } from '../house/use-lines.tsx';
import { words as houseWords } from '../house/words.ts';
import type { DayCards, PlanWishes } from '../planning/cards.ts';
import { openOf } from '../planning/planned.ts';
import { WishesForm } from '../planning/wishes-form.tsx';
import { words as planning } from '../planning/words.ts';
import { words } from './words.ts';

export interface DayDeskProps {
  readonly cards: DayCards;
  /** Whether the records hold the plan as it is. */
  readonly isStanding: boolean;
  /** Of the saved file. */
  readonly name: string;
  readonly isBusy: boolean;
  readonly isCounted: boolean;
  readonly wishes: PlanWishes;
  readonly onWishes: (wishes: PlanWishes) => void;
  readonly onPrint: () => void;
  readonly onAnew: () => void;
}

export function DayDesk(props: DayDeskProps) {
  const { cards, isStanding, name, isBusy, isCounted, wishes, onWishes, onPrint, onAnew } = props;
  const codes = openOf(cards).map(({ code }) => code);
  return (
    <section className="day-desk" aria-label={words.forTheDay}>
      {codes.length === 0 ? null : (
        <div className="day-ready">
          <div className="lay-out">
            <h3 className="today-name">{words.layOut}</h3>
            <LayOut cards={cards} />
            {cards.lacking === undefined ? null : (
              <p className="lacking">{words.lacking(planning.lacking(cards.lacking))}</p>
            )}
          </div>
          <PressButtons what={{ codes, name }} isReady={!isBusy} onStart={onPrint} />
        </div>
      )}
      <div className="day-more">
        <Button className="quiet outward" isPending={isBusy} onPress={onAnew}>
          {words.another}
        </Button>
        <WishesForm wishes={wishes} onChange={onWishes} isCounted={isCounted}>
          {isStanding ? <p className="help">{words.keptStands}</p> : null}
        </WishesForm>
      </div>
    </section>
  );
}

/** Where the house was counted, with how many there are. */
function LayOut({ cards: { uses = [], materials } }: Pick<DayDeskProps, 'cards'>) {
  if (uses.length > 0) {
    return (
      <div className="house">
        <p className="help">{houseWords.ofCount}</p>
        <UseLines uses={uses} />
      </div>
    );
  }
  return (
    <ul>
      {planning.layOut(materials).map((thing) => (
        <li key={thing}>{thing}</li>
      ))}
    </ul>
  );
}
