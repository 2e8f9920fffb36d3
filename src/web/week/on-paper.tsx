// Printing the week, or one day of it: the sheets that are not done, in one of two orders.
import type { Day, Stock } from '../../records/index.ts';
import { PressButtons } from '../actions/press-buttons.tsx';
import { UseLines } from '../house/use-lines.tsx';
import { useUses } from '../house/use-uses.ts';
import { words as houseWords } from '../house/words.ts';
import { useKept } from '../offline/kept.ts';
import type { Planner } from '../planning/planner.ts';
import { ChoiceControl } from '../sentence/choice-control.tsx';
import { Pieces } from '../speaking/pieces-shown.tsx';
import { codesToPrint, ORDERS, type Order } from './paper-order.ts';
import type { CardsByChild } from './use-cards.ts';
import type { WeekInView } from './use-week.ts';
import { words } from './words.ts';

export interface OnPaperProps {
  readonly week: WeekInView;
  readonly cards: CardsByChild;
  /** Whether the plans of all chosen children are read: else sheets would be missing on paper. */
  readonly isWhole: boolean;
  readonly planner: Planner;
  /** What is left of what was counted in the house; absent: nothing was. */
  readonly stock: Stock | undefined;
}

const WEEK = 'week';

function readDay(left: unknown): Day | undefined {
  return typeof left === 'string' ? left : undefined;
}

function readOrder(left: unknown): Order {
  return ORDERS.find((order) => order === left) ?? 'by-child';
}

export function OnPaper({ week, cards, isWhole, planner, stock }: OnPaperProps) {
  const { chosen, columns, today, monday } = week;
  const [wanted, setWanted] = useKept('day to print', readDay);
  const [order, setOrder] = useKept('order to print', readOrder);
  const ahead = columns.filter((day) => day >= today);
  const day = ahead.find((each) => each === wanted);
  const weeks = chosen.map(({ id }) => ({ child: id, days: cards.get(id) ?? [] }));
  const codes = codesToPrint(weeks, day === undefined ? ahead : [day], order);
  const isAsked = stock !== undefined && codes.length > 0;
  const uses = useUses(planner, isAsked ? { stock, codes } : undefined);
  const names = chosen.map(({ nickname }) => nickname);
  return (
    <section className="on-paper" aria-label={words.onPaper}>
      <p className="asked">
        <Pieces
          pieces={words.print.sentence(codes.length)}
          controls={{
            what: (
              <ChoiceControl
                label={words.print.what}
                value={day ?? WEEK}
                choices={[
                  { value: WEEK, name: words.print.week },
                  ...ahead.map((each) => ({ value: each, name: words.longDay(each) })),
                ]}
                objection={undefined}
                onChange={setWanted}
              />
            ),
            order: (
              <ChoiceControl
                label={words.print.order}
                value={order}
                choices={ORDERS.map((each) => ({ value: each, name: words.print.orders[each] }))}
                objection={undefined}
                onChange={(value) => setOrder(ORDERS.find((each) => each === value) ?? order)}
              />
            ),
          }}
        />
      </p>
      <PressButtons
        what={{ codes, name: words.fileName(names, monday, day) }}
        isReady={isWhole && codes.length > 0}
      />
      {uses === undefined || uses.length === 0 ? null : (
        <div className="house">
          <h3 className="field-label">{houseWords.title}</h3>
          <UseLines uses={uses} />
        </div>
      )}
    </section>
  );
}
