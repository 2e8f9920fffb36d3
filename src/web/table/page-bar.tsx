// Which page lies on the table: sheet, what is cut out of it, answers or the adult's page, and which of them.
import { memo, type ReactNode } from 'react';
import { Button } from 'react-aria-components/Button';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { type ShownChild, VIEWS, type View } from '../making/protocol.ts';
import type { WantedPage } from '../making/wanted-page.ts';
import { words } from '../words.ts';

export interface PageBarProps {
  readonly view: View;
  /** Whether anything of the sheet is to be cut out. */
  readonly hasCut: boolean;
  readonly place: number;
  readonly places: number;
  /** What was turned to last; it may still be on its way. */
  readonly wanted: WantedPage;
  readonly onView: (view: View) => void;
  readonly onPlace: (place: number) => void;
  /** Whose sheet lies on the table, in a pack for a group. */
  readonly child: ShownChild | undefined;
  /** Which page of a sheet that takes several. */
  readonly leaf: number;
  readonly leaves: number;
  readonly onLeaf: (leaf: number) => void;
  /** What else can be done with the page. */
  readonly toggle: ReactNode;
}

/** Drawn anew only when it is to show something else. */
export const PageBar = memo((props: PageBarProps) => {
  const { view, place, places, hasCut, onView, onPlace, child, leaf, leaves, onLeaf, toggle } =
    props;
  const { wanted } = props;
  const views = VIEWS.filter((name) => name !== 'cut' || hasCut);
  const names = view === 'adult' ? words.turnAdultPage : words.turnSheet;
  return (
    <div className="page-bar">
      <ToggleButtonGroup
        className="views"
        aria-label={words.viewLabel}
        selectionMode="single"
        disallowEmptySelection
        selectedKeys={[view]}
        onSelectionChange={([chosen]) => {
          const next = VIEWS.find((name) => name === chosen);
          if (next) onView(next);
        }}
      >
        {views.map((name) => (
          <ToggleButton key={name} id={name} className="view">
            {words.views[name]}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
      {child === undefined || child.children < 2 ? null : (
        <Pager
          names={{
            ...words.turnChild,
            place: (at, all) => words.turnChild.place(child.name, at, all),
          }}
          place={child.number}
          wanted={Math.ceil(wanted.wanted / child.sheets)}
          places={child.children}
          onPlace={(next) => onPlace((next - 1) * child.sheets + 1)}
        />
      )}
      <Pager names={names} place={place} wanted={wanted.wanted} places={places} onPlace={onPlace} />
      {leaves > 1 && view !== 'adult' ? (
        <Pager
          names={words.turnLeaf}
          place={leaf}
          wanted={wanted.leaf}
          places={leaves}
          onPlace={onLeaf}
        />
      ) : null}
      {toggle}
    </div>
  );
});

interface PagerProps extends Pick<PageBarProps, 'place' | 'places' | 'onPlace'> {
  /** What was turned to last. */
  readonly wanted: number;
  readonly names: {
    readonly before: string;
    readonly next: string;
    readonly place: (place: number, places: number) => string;
  };
}

function Pager({ names, place, wanted, places, onPlace }: PagerProps) {
  // From there, not from what still lies on the table: each of two fast presses turns.
  const from = Math.max(1, Math.min(wanted, places));
  return (
    <div className="pager">
      <Button
        className="quiet turn"
        aria-label={names.before}
        isDisabled={from <= 1}
        onPress={() => onPlace(from - 1)}
      >
        ←
      </Button>
      <output className="place">{names.place(place, places)}</output>
      <Button
        className="quiet turn"
        aria-label={names.next}
        isDisabled={from >= places}
        onPress={() => onPlace(from + 1)}
      >
        →
      </Button>
    </div>
  );
}
