// The stickers row by row: colour, size, how many.
import { type RefObject, useRef } from 'react';
import { Button } from 'react-aria-components/Button';
import { TextField } from '../children/text-field.tsx';
import type { Catalogue } from '../making/protocol.ts';
import { shared } from '../speaking/shared.ts';
import { useFocusPassedOn } from '../use-focus-passed-on.ts';
import {
  changedRow,
  type StickerRow,
  type StockDraft,
  withoutRow,
  withRow,
} from './stock-draft.ts';
import { words } from './words.ts';

export interface StickerRowsProps {
  readonly colours: Catalogue['colours'];
  readonly draft: StockDraft;
  readonly change: (draft: StockDraft) => void;
}

export function StickerRows({ colours, draft, change }: StickerRowsProps) {
  const add = useRef<HTMLButtonElement>(null);
  return (
    <fieldset className="stickers">
      <legend className="field-label">{words.stickers}</legend>
      {draft.stickers.length === 0 ? <p className="help">{words.noStickers}</p> : null}
      {draft.stickers.map((row, place) => (
        <Row
          key={row.key}
          row={row}
          number={place + 1}
          colours={colours}
          draft={draft}
          change={change}
          add={add}
        />
      ))}
      <Button ref={add} className="plain" onPress={() => change(withRow(draft))}>
        {words.addRow}
      </Button>
    </fieldset>
  );
}

interface RowProps extends StickerRowsProps {
  readonly row: StickerRow;
  readonly number: number;
  /** What adds a row: it is left when all rows have gone. */
  readonly add: RefObject<HTMLElement | null>;
}

function Row({ row, number, colours, draft, change, add }: RowProps) {
  const own = useRef<HTMLDivElement>(null);
  useFocusPassedOn(own, () => add.current);
  const put = (part: Partial<StickerRow>) => change(changedRow(draft, row.key, part));
  return (
    // biome-ignore lint/a11y/useSemanticElements: a row of three fields is no fieldset of its own
    <div ref={own} className="sticker-row" role="group" aria-label={words.row(number)}>
      <label className="field">
        <span className="field-label">{words.colour}</span>
        <select
          className="line"
          value={row.colour}
          onChange={({ target }) => {
            const found = colours.find(({ name }) => name === target.value);
            if (found) put({ colour: found.name });
          }}
        >
          {colours.map(({ name }) => (
            <option key={name} value={name}>
              {shared.colour(name)}
            </option>
          ))}
        </select>
      </label>
      <TextField
        label={words.diameter}
        value={row.diameter}
        most={3}
        isNumber
        onChange={(diameter) => put({ diameter })}
      />
      <TextField
        label={words.count}
        value={row.count}
        most={6}
        isNumber
        onChange={(count) => put({ count })}
      />
      <Button
        className="quiet"
        aria-label={words.removeRow(number)}
        onPress={() => change(withoutRow(draft, row.key))}
      >
        {words.remove}
      </Button>
    </div>
  );
}
