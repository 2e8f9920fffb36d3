// The screen on which sheets are made: the page on its table, and the recipe beside it.
import { useCallback, useEffect, useMemo, useState } from 'react';
import { useGroup } from './actions/use-group.ts';
import { ChangeToggle } from './changing/change-toggle.tsx';
import { useChanging } from './changing/use-changing.ts';
import { Desk } from './desk.tsx';
import { useHouse } from './house/use-house.ts';
import { fetchLater, later } from './later.ts';
import { pagesFrom } from './making/pages.ts';
import { VIEWS, type View } from './making/protocol.ts';
import { useShown } from './making/use-shown.ts';
import { readYes, useKept } from './offline/kept.ts';
import { followPictures } from './pictures/pictures-now.ts';
import { type Entries, isPrinted, withStock } from './recipe/entries.ts';
import { useRecipe } from './recipe/use-recipe.ts';
import type { ScreenProps } from './screen-props.ts';
import { Unplaced } from './sentence/unplaced.tsx';
import { Lying } from './table/lying.tsx';
import { words } from './words.ts';

const changingParts = later(() => import('./changing/changing-parts.ts'));

export function MakeScreen({ maker, planner, catalogue }: ScreenProps) {
  const pages = useMemo(() => pagesFrom(maker), [maker]);
  // What came with a file may be what was lacking.
  useEffect(() => followPictures(pages.askAgain), [pages]);
  const { entries, edit, turn } = useRecipe(pages.askAhead);
  const [view, setView] = useKept('view', readView);
  const [sheet, setSheet] = useKept('sheet in view', readPlace);
  const [adultPage, setAdultPage] = useKept('adult page in view', readPlace);
  const [leaf, setLeaf] = useKept('page of the sheet in view', readPlace);
  const [isShown, setShown] = useState(false);
  useEffect(() => {
    if (isShown) fetchLater();
  }, [isShown]);
  const house = useHouse(planner, isShown || entries.atHand === true);
  const made = useMemo(() => withStock(entries, house.stock), [entries, house.stock]);
  const group = useGroup(entries);
  const isKnown = house.isKnown || entries.atHand !== true;
  const place = view === 'adult' ? adultPage : sheet;
  const wanted = useMemo(() => ({ wanted: place, leaf }), [place, leaf]);
  const { shown, objections, isMaking } = useShown(
    pages,
    isKnown ? made : undefined,
    view,
    wanted,
    group.rested,
  );
  if (shown !== undefined && !isShown) setShown(true);
  const card = catalogue?.activities.find(({ id }) => id === shown?.activity);
  const [isChanging, setChanging] = useKept('changing', readYes);
  // A guide and a half-made page show the sheet in another way.
  const canChange = view === 'sheet' && isPrinted(entries);
  const changing = useChanging(
    maker,
    { entries, sheet, group: group.rested },
    isChanging && canChange,
    edit,
  );
  // Only a sheet that was changed by hand can be in doubt.
  const isSettled = entries.changed === undefined || (!isMaking && group.rested === group.group);
  const parts = changingParts.use(isChanging);
  const toggle = useMemo(
    () =>
      canChange ? (
        <ChangeToggle isOn={isChanging} isDisabled={!isShown} onChange={setChanging} />
      ) : null,
    [canChange, isChanging, isShown, setChanging],
  );
  const turnTo = useCallback(
    (place: number) => {
      setLeaf(1);
      if (view === 'adult') setAdultPage(place);
      else setSheet(place);
    },
    [view, setLeaf, setAdultPage, setSheet],
  );
  const turnToFirst = useCallback(
    (next: Entries) => {
      setSheet(1);
      setAdultPage(1);
      setLeaf(1);
      turn(next);
    },
    [setSheet, setAdultPage, setLeaf, turn],
  );
  return (
    <main className="make">
      <section className="table" aria-label={words.table}>
        <Lying
          pages={pages}
          shown={shown}
          isMaking={isMaking}
          card={card}
          view={view}
          wanted={wanted}
          isRefused={objections.length > 0}
          onView={setView}
          onPlace={turnTo}
          onLeaf={setLeaf}
          toggle={toggle}
        >
          {changing && shown && parts ? (
            <>
              <parts.ChangingPaper shown={shown} changing={changing} maker={maker} />
              <parts.ChangingProof maker={maker} changing={changing} />
            </>
          ) : null}
        </Lying>
      </section>
      <section className="desk" aria-label={words.desk}>
        {catalogue === undefined ? (
          <Unplaced objections={objections} card={undefined} />
        ) : (
          <Desk
            maker={maker}
            planner={planner}
            catalogue={catalogue}
            entries={entries}
            made={made}
            house={house}
            group={group}
            shown={shown}
            objections={objections}
            isSettled={isSettled}
            edit={edit}
            turn={turnToFirst}
          />
        )}
      </section>
    </main>
  );
}

function readView(left: unknown): View {
  return VIEWS.find((view) => view === left) ?? 'sheet';
}

function readPlace(left: unknown): number {
  return typeof left === 'number' ? left : 1;
}
