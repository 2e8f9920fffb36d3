// Which page lies on the table: sheet, what is cut out of it, answers or the adult's page, and which sheet of the pack.
import { Button } from 'react-aria-components/Button';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { ToggleButtonGroup } from 'react-aria-components/ToggleButtonGroup';
import { VIEWS, type View } from '../making/protocol.ts';
import { words } from '../words.ts';

export interface PageBarProps {
  readonly view: View;
  readonly sheet: number;
  readonly sheets: number;
  /** Whether anything of the sheet is to be cut out. */
  readonly hasCut: boolean;
  readonly onView: (view: View) => void;
  readonly onSheet: (sheet: number) => void;
}

export function PageBar({ view, sheet, sheets, hasCut, onView, onSheet }: PageBarProps) {
  const views = VIEWS.filter((name) => name !== 'cut' || hasCut);
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
      <div className="pager">
        <Button
          className="quiet turn"
          aria-label={words.previousSheet}
          isDisabled={view === 'adult' || sheet <= 1}
          onPress={() => onSheet(sheet - 1)}
        >
          ←
        </Button>
        <output className="place">
          {view === 'adult' ? words.wholePack : words.pageOf(sheet, sheets)}
        </output>
        <Button
          className="quiet turn"
          aria-label={words.nextSheet}
          isDisabled={view === 'adult' || sheet >= sheets}
          onPress={() => onSheet(sheet + 1)}
        >
          →
        </Button>
      </div>
    </div>
  );
}
