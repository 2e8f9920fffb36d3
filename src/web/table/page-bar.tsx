// Which page lies on the table: sheet, what is cut out of it, answers or the adult's page, and which of them.
import { memo, type ReactNode } from 'react';
import { Button } from 'react-aria-components/Button';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { type ShownChild, VIEWS, type View } from '../making/protocol.ts';
import { words } from '../words.ts';

export interface PageBarProps {
  readonly view: View;
  /** Whether anything of the sheet is to be cut out. */
  readonly hasCut: boolean;
  readonly place: number;
  readonly places: number;
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
          places={child.children}
          onPlace={(next) => onPlace((next - 1) * child.sheets + 1)}
        />
      )}
      <Pager names={names} place={place} places={places} onPlace={onPlace} />
      {leaves > 1 && view !== 'adult' ? (
        <Pager names={words.turnLeaf} place={leaf} places={leaves} onPlace={onLeaf} />
      ) : null}
      {toggle}
    </div>
  );
});

interface PagerProps extends Pick<PageBarProps, 'place' | 'places' | 'onPlace'> {
  readonly names: {
    readonly before: string;
    readonly next: string;
    readonly place: (place: number, places: number) => string;
  };
}

function Pager({ names, place, places, onPlace }: PagerProps) {
  return (
    <div className="pager">
      <Button
        className="quiet turn"
        aria-label={names.before}
        isDisabled={place <= 1}
        onPress={() => onPlace(place - 1)}
      >
        ←
      </Button>
      <output className="place">{names.place(place, places)}</output>
      <Button
        className="quiet turn"
        aria-label={names.next}
        isDisabled={place >= places}
        onPress={() => onPlace(place + 1)}
      >
        →
      </Button>
    </div>
  );
}
