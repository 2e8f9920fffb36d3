// The screen on which sheets are made: the page on its table, and the recipe beside it.
import { Desk } from './desk.tsx';
import { HandPaper } from './hand/hand-paper.tsx';
import { HandProof } from './hand/hand-proof.tsx';
import { HandToggle } from './hand/hand-toggle.tsx';
import { useHand } from './hand/use-hand.ts';
import { VIEWS, type View } from './making/protocol.ts';
import { useShown } from './making/use-shown.ts';
import { useKept } from './offline/kept.ts';
import type { Entries } from './recipe/entries.ts';
import { useRecipe } from './recipe/use-recipe.ts';
import type { ScreenProps } from './screen-props.ts';
import { PageBar } from './table/page-bar.tsx';
import { Paper } from './table/paper.tsx';
import { Proof } from './table/proof.tsx';
import { words } from './words.ts';

export function MakeScreen({ maker, catalogue }: ScreenProps) {
  const { entries, edit, turn } = useRecipe();
  const [view, setView] = useKept('view', readView);
  const [sheet, setSheet] = useKept('sheet in view', readPlace);
  const [adultPage, setAdultPage] = useKept('adult page in view', readPlace);
  const wanted = view === 'adult' ? adultPage : sheet;
  const { shown, objections, isMaking } = useShown(maker, entries, view, wanted);
  const card = catalogue?.activities.find(({ id }) => id === shown?.activity);
  const [isByHand, setByHand] = useKept('changing by hand', readYes);
  const hand = useHand(maker, entries, sheet, isByHand && view === 'sheet', edit);
  const turnToFirst = (next: Entries) => {
    setSheet(1);
    setAdultPage(1);
    turn(next);
  };
  return (
    <main className="make">
      <section className="table" aria-label={words.table}>
        <PageBar
          view={view}
          place={shown?.place ?? 1}
          places={shown?.places ?? 1}
          onView={setView}
          onPlace={view === 'adult' ? setAdultPage : setSheet}
        >
          {view === 'sheet' ? <HandToggle isOn={isByHand} onChange={setByHand} /> : null}
        </PageBar>
        {hand && shown ? (
          <>
            <HandPaper shown={shown} hand={hand} maker={maker} />
            <HandProof maker={maker} hand={hand} />
          </>
        ) : (
          <>
            <Paper shown={shown} isMaking={isMaking} />
            <Proof shown={shown} card={card} view={view} isRefused={objections.length > 0} />
          </>
        )}
      </section>
      <section className="desk" aria-label={words.desk}>
        {catalogue === undefined ? null : (
          <Desk
            maker={maker}
            catalogue={catalogue}
            entries={entries}
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

function readView(left: unknown): View {
  return VIEWS.find((view) => view === left) ?? 'sheet';
}

function readPlace(left: unknown): number {
  return typeof left === 'number' ? left : 1;
}

function readYes(left: unknown): boolean {
  return left === true;
}
