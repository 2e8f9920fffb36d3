// One sheet of the day: its paper on the table, and a label beside it that says what, why and how long.
import type { ReactNode } from 'react';
import { hashOf } from '../place-names.ts';
import type { SheetCard } from '../planning/cards.ts';
import type { Planner } from '../planning/planner.ts';
import { words as planning } from '../planning/words.ts';
import { addressToRecord } from '../record/code-in-address.ts';
import { Paper } from '../table/paper.tsx';
import { capital } from '../words.ts';
import { SheetMenu, type SheetMenuProps } from './sheet-menu.tsx';
import { usePicture } from './use-picture.ts';
import { words } from './words.ts';

export interface DaySheetProps extends Omit<SheetMenuProps, 'name'> {
  readonly planner: Planner;
  readonly card: SheetCard;
  /** The nickname of the child. */
  readonly child: string;
  /** What was said of this sheet. */
  readonly children: ReactNode;
}

export function DaySheet({ planner, card, child, children, ...menu }: DaySheetProps) {
  const { shown, isMaking } = usePicture(planner, card.code);
  const { name, isDone } = card;
  return (
    <li className="day-sheet" data-done={isDone ? 'yes' : 'no'} aria-busy={menu.isBusy}>
      <div className="day-paper" role="img" aria-label={words.picture(name)}>
        <Paper shown={shown} isMaking={isMaking || menu.isBusy} />
      </div>
      <div className="day-label">
        <h3 className="today-name">{capital(name)}</h3>
        <p className="day-about">{words.about(card)}</p>
        {isDone ? <p className="day-done">{words.done}</p> : <Ahead card={card} child={child} />}
        <div className="row day-deeds">
          {isDone ? (
            <a href={hashOf('record')} aria-label={words.of(words.seeRecord, name)}>
              {words.seeRecord}
            </a>
          ) : (
            <>
              <a href={addressToRecord(card.code)} aria-label={words.of(words.record, name)}>
                {words.record}
              </a>
              <SheetMenu name={name} {...menu} />
            </>
          )}
        </div>
        {children}
      </div>
    </li>
  );
}

/** Why a sheet that is not done was chosen, and what to make ready for it. */
function Ahead({ card, child }: { readonly card: SheetCard; readonly child: string }) {
  return (
    <>
      <p className="day-why">{planning.whySentence(card, child)}</p>
      <p className="day-size">{words.size(card)}</p>
      <p className="day-things">{words.layOutFor(planning.layOut(card.materials))}</p>
    </>
  );
}
