// Which page lies on the table: sheet, answers or the adult's page, and which of them.
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components/Button';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { VIEWS, type View } from '../making/protocol.ts';
import { words } from '../words.ts';

export interface PageBarProps {
  readonly view: View;
  readonly place: number;
  readonly places: number;
  readonly onView: (view: View) => void;
  readonly onPlace: (place: number) => void;
  /** What else can be done with the page. */
  readonly children?: ReactNode;
}

export function PageBar({ view, place, places, onView, onPlace, children }: PageBarProps) {
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
        {VIEWS.map((name) => (
          <ToggleButton key={name} id={name} className="view">
            {words.views[name]}
          </ToggleButton>
        ))}
      </ToggleButtonGroup>
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
      {children}
    </div>
  );
}
