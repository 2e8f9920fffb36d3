// Opens a pack file, such as that of a sheet whose code is too long to be printed; of several sheets one is chosen.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { FileTrigger } from 'react-aria-components/FileTrigger';
import { words as changingWords } from '../changing/words.ts';
import type { Maker } from '../making/maker.ts';
import type { FiledSheetShown } from '../making/protocol.ts';
import type { Entries } from '../recipe/entries.ts';

export interface OpenPackFileProps {
  readonly maker: Maker;
  readonly onOpen: (entries: Entries) => void;
}

export function OpenPackFile({ maker, onOpen }: OpenPackFileProps) {
  const [sheets, setSheets] = useState<readonly FiledSheetShown[]>([]);
  const [objection, setObjection] = useState('');
  const open = async (code: string) => {
    const reply = await maker.ask('open', { code });
    if (!reply.ok) {
      setObjection(reply.objections.map(({ sentence }) => sentence).join(' '));
      return;
    }
    setObjection('');
    setSheets([]);
    onOpen(reply.value);
  };
  const read = async (file: File | undefined) => {
    if (file === undefined) return;
    const reply = await maker.ask('openFile', { text: await file.text() });
    setSheets(reply.ok && reply.value.length > 1 ? reply.value : []);
    setObjection(reply.ok ? '' : reply.objections.map(({ sentence }) => sentence).join(' '));
    const [only, ...others] = reply.ok ? reply.value : [];
    if (only && others.length === 0) await open(only.code);
  };
  return (
    <div className="pack-file">
      <FileTrigger
        acceptedFileTypes={['application/json', '.json']}
        onSelect={(files) => void read(files?.[0])}
      >
        <Button className="quiet">{changingWords.openFile}</Button>
      </FileTrigger>
      <p className="objection" aria-live="polite">
        {objection}
      </p>
      {sheets.length === 0 ? null : (
        <fieldset className="change-group">
          <legend className="field-label">{changingWords.whichSheet}</legend>
          <div className="chips pack-sheets">
            {sheets.map(({ code, name, step, isChanged }, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: one sheet may stand in a file twice
              <Button key={index} className="chip" onPress={() => void open(code)}>
                {changingWords.filed(index + 1, name, step, isChanged)}
              </Button>
            ))}
          </div>
        </fieldset>
      )}
    </div>
  );
}
