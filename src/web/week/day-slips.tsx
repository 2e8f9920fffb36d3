// The slips of one child on one day: those that lie for good, then those that can still be moved.
import { Button } from 'react-aria-components/Button';
import { GridList, GridListItem } from 'react-aria-components/GridList';
import { useDragAndDrop } from 'react-aria-components/useDragAndDrop';
import type { Day } from '../../records/index.ts';
import '../look/slips.css';
import { doneOf, openOf } from '../planning/planned.ts';
import { capital } from '../words.ts';
import { type PlannedDay, placeBeside, sheetKey } from './moves.ts';
import type { Row } from './row.ts';
import { LyingSlip, Slip } from './slip.tsx';
import { words } from './words.ts';

export interface DaySlipsProps {
  readonly row: Row;
  readonly day: Day;
}

export function DaySlips({ row, day: name }: DaySlipsProps) {
  const day = row.days.find((each) => each.day === name) ?? { day: name, sheets: [] };
  const isPast = name < row.today;
  const lying = isPast ? day.sheets : doneOf(day);
  return (
    <div className="day-slips">
      {lying.length === 0 ? null : (
        <ul className="slips" aria-label={words.listOf(row.nickname, name)}>
          {lying.map((sheet) => (
            <LyingSlip key={sheet.code} row={row} day={day} sheet={sheet} />
          ))}
        </ul>
      )}
      {isPast && lying.length === 0 ? <p className="nothing">{words.nothingWas}</p> : null}
      {isPast ? null : <OpenSlips row={row} day={day} />}
    </div>
  );
}

/** Sheets are dragged among the days of their own child only. */
function OpenSlips({ row, day }: { readonly row: Row; readonly day: PlannedDay }) {
  const type = `samewise-sheet-${row.id}`;
  const drop = (key: string, place?: number) => {
    const [from = '', code = ''] = key.split(' ');
    const to = day.day;
    row.change({ kind: 'move', code, from, to, ...(place === undefined ? {} : { place }) });
  };
  const { dragAndDropHooks } = useDragAndDrop({
    getItems: (keys) => [...keys].map((code) => ({ [type]: sheetKey(day.day, String(code)) })),
    acceptedDragTypes: [type],
    getDropOperation: () => 'move',
    onReorder: ({ keys: [code], target }) => {
      const side = target.dropPosition === 'before' ? 'before' : 'after';
      const place = placeBeside(day, String(code), String(target.key), side);
      drop(sheetKey(day.day, String(code)), place);
    },
    onInsert: async ({ items: [item], target }) => {
      if (item?.kind !== 'text') return;
      const key = await item.getText(type);
      const side = target.dropPosition === 'before' ? 'before' : 'after';
      drop(key, placeBeside(day, key.split(' ')[1] ?? '', String(target.key), side));
    },
    onRootDrop: async ({ items: [item] }) => {
      if (item?.kind === 'text') drop(await item.getText(type));
    },
  });
  const open = openOf(day);
  return (
    <GridList
      className="slips"
      aria-label={words.listOf(row.nickname, day.day)}
      items={open.map((sheet) => ({ ...sheet, id: sheet.code }))}
      dependencies={[row]}
      dragAndDropHooks={dragAndDropHooks}
      renderEmptyState={() => <p className="nothing">{words.nothing}</p>}
    >
      {(sheet) => (
        <GridListItem className="slip" textValue={capital(sheet.name)}>
          <Slip row={row} day={day} sheet={sheet} />
          <Button slot="drag" className="grip">
            <span aria-hidden="true">⠿</span>
          </Button>
        </GridListItem>
      )}
    </GridList>
  );
}
