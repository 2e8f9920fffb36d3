// The screen on which sheets are made: the page on its table, and the recipe beside it.
import { useMemo, useState } from 'react';
import { Desk } from './desk.tsx';
import { useHouse } from './house/use-house.ts';
import type { View } from './making/protocol.ts';
import { useShown } from './making/use-shown.ts';
import { type Entries, withStock } from './recipe/entries.ts';
import { useRecipe } from './recipe/use-recipe.ts';
import type { ScreenProps } from './screen-props.ts';
import { PageBar } from './table/page-bar.tsx';
import { Paper } from './table/paper.tsx';
import { Proof } from './table/proof.tsx';
import { words } from './words.ts';

export function MakeScreen({ maker, planner, catalogue }: ScreenProps) {
  const { entries, edit, turn } = useRecipe();
  const [view, setView] = useState<View>('sheet');
  const [sheet, setSheet] = useState(1);
  const [isShown, setShown] = useState(false);
  const house = useHouse(planner, isShown || entries.atHand === true);
  const made = useMemo(() => withStock(entries, house.stock), [entries, house.stock]);
  const isKnown = house.isKnown || entries.atHand !== true;
  const { shown, objections, isMaking } = useShown(maker, isKnown ? made : undefined, view, sheet);
  if (shown !== undefined && !isShown) setShown(true);
  const card = catalogue?.activities.find(({ id }) => id === shown?.activity);
  const turnToFirst = (next: Entries) => {
    setSheet(1);
    turn(next);
  };
  return (
    <main className="make">
      <section className="table" aria-label={words.table}>
        <PageBar
          view={view}
          sheet={shown?.sheet ?? 1}
          sheets={shown?.sheets ?? 1}
          onView={setView}
          onSheet={setSheet}
        />
        <Paper shown={shown} isMaking={isMaking} />
        <Proof shown={shown} card={card} view={view} isRefused={objections.length > 0} />
      </section>
      <section className="desk" aria-label={words.desk}>
        {catalogue === undefined ? null : (
          <Desk
            maker={maker}
            planner={planner}
            catalogue={catalogue}
            entries={entries}
            made={made}
            house={house}
            shown={shown}
            objections={objections}
            edit={edit}
            turn={turnToFirst}
          />
        )}
      </section>
    </main>
  );
}
