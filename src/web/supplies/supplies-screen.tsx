// The screen on which an adult counts what is in the house, and sees what is left.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Form } from 'react-aria-components/Form';
import '../look/supplies.css';
import type { ColourName } from '../../palette/index.ts';
import { Chips } from '../children/chips.tsx';
import { Message } from '../children/message.tsx';
import { RecordsMain } from '../children/records-main.tsx';
import { useGround } from '../children/use-ground.ts';
import { objectionOf } from '../children/use-records.ts';
import { useSaid } from '../children/use-said.ts';
import type { Catalogue } from '../making/protocol.ts';
import { useKept } from '../offline/kept.ts';
import OwnPictures from '../pictures/own-pictures.tsx';
import { words as pictures } from '../pictures/words.ts';
import type { StockReply } from '../planning/cards.ts';
import { words as planning } from '../planning/words.ts';
import type { ScreenProps } from '../screen-props.ts';
import { shared } from '../speaking/shared.ts';
import { useOneAtATime } from '../use-one-at-a-time.ts';
import { StickerRows } from './sticker-rows.tsx';
import { readStockDraft, type StockDraft, stockEntryOf, wrongRow } from './stock-draft.ts';
import { useStock } from './use-stock.ts';
import { words } from './words.ts';

export default function SuppliesScreen({ planner, catalogue }: ScreenProps) {
  const { entries, shelf } = useGround();
  const { said, say, undo } = useSaid();
  const stock = useStock(planner, entries, shelf);
  return (
    <RecordsMain className="supplies">
      {() => (
        <>
          <section>
            <h2>{words.title}</h2>
            <p className="supplies-about">{words.about}</p>
            <Message said={said} undo={undo} />
            {stock === undefined || catalogue === undefined ? (
              <p aria-busy="true">{words.looking}</p>
            ) : (
              <Count
                key={JSON.stringify(stock)}
                stock={stock}
                colours={catalogue.colours}
                onSaved={(id) => say({ text: words.saved, undo: id })}
              />
            )}
          </section>
          <section>
            <h2>{pictures.title}</h2>
            <OwnPictures />
          </section>
        </>
      )}
    </RecordsMain>
  );
}

interface CountProps {
  readonly stock: StockReply;
  readonly colours: Catalogue['colours'];
  readonly onSaved: (id: string) => void;
}

function Count({ stock: { stock }, colours, onSaved }: CountProps) {
  const { append } = useGround();
  const [draft, setDraft] = useKept(`count after ${JSON.stringify(stock)}`, (left) =>
    readStockDraft(left, stock?.left),
  );
  const [objection, setObjection] = useState('');
  const change = (next: StockDraft) => {
    setObjection('');
    setDraft(next);
  };
  const save = useOneAtATime(async () => {
    const wrong = wrongRow(draft);
    if (wrong > 0) return setObjection(words.wrongNumber(wrong));
    const saved = await append([stockEntryOf(draft)]);
    if (!saved.ok) return setObjection(await objectionOf(saved));
    const [first] = saved.value;
    if (first !== undefined) onSaved(first.id);
  });
  return (
    <Form
      className="count"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <p className="help">
        {stock === undefined ? words.neverCounted : words.counted(stock.countedAt, stock.given)}
      </p>
      <StickerRows colours={colours} draft={draft} change={change} />
      <Things colours={colours} draft={draft} change={change} />
      <p className="objection" role="alert">
        {objection}
      </p>
      <Button type="submit" className="next">
        {words.save}
      </Button>
    </Form>
  );
}

function Things({
  colours,
  draft,
  change,
}: Pick<CountProps, 'colours'> & {
  readonly draft: StockDraft;
  readonly change: (draft: StockDraft) => void;
}) {
  const names = colours.map(({ name }) => [name, shared.colour(name)] as const);
  return (
    <>
      <Chips
        label={words.crayons}
        names={Object.fromEntries(names) as Record<ColourName, string>}
        chosen={draft.crayons}
        onChange={(crayons) => change({ ...draft, crayons })}
        several
      />
      <Chips
        label={words.tools}
        help={words.care}
        names={planning.tools}
        chosen={draft.tools}
        onChange={(tools) => change({ ...draft, tools })}
        several
      />
      <Chips
        label={words.printer}
        help={words.printerHelp}
        names={words.printers}
        chosen={draft.printer}
        onChange={(printer) => change({ ...draft, printer })}
      />
      <Chips
        label={words.papers}
        help={words.papersHelp}
        names={words.paperNames}
        chosen={draft.papers}
        onChange={(papers) => change({ ...draft, papers })}
        several
      />
    </>
  );
}
