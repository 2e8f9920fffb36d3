// Reads a pack file, such as that of a sheet whose code is too long to be printed; of several sheets one is chosen.
import { memo, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { FileTrigger } from 'react-aria-components/FileTrigger';
import { words as changingWords } from '../changing/words.ts';
import type { Maker } from '../making/maker.ts';
import type { FiledSheetShown, Objection } from '../making/protocol.ts';
import { sentencesOf } from '../making/reply-form.ts';
import { lendPictures } from '../pictures/pictures-now.ts';
import { words } from '../words.ts';

/** Further faults mostly follow from the first ones. */
const MOST_FAULTS = 2;

export interface OpenPackFileProps {
  readonly maker: Maker;
  /** What it is for, where that is another thing than on Make. */
  readonly help?: string;
  /** Goes to the sheet of the code; answers why it cannot, in words, or nothing. */
  readonly onCode: (code: string) => Promise<string> | string;
}

/** What is wrong with a pack file; of a file of something else, all of which is wrong, only that. */
function toldOf(objections: readonly Objection[]): string {
  const other = objections.find(({ control }) => control === 'format');
  return other?.sentence ?? changingWords.notPack(sentencesOf(objections.slice(0, MOST_FAULTS)));
}

/** Drawn anew only when it is to show something else. */
export const OpenPackFile = memo((props: OpenPackFileProps) => {
  const { maker, help = changingWords.openHelp, onCode } = props;
  const [sheets, setSheets] = useState<readonly FiledSheetShown[]>([]);
  const [objection, setObjection] = useState('');
  const open = async (code: string) => {
    const fault = await onCode(code);
    setObjection(fault);
    if (fault === '') setSheets([]);
  };
  const read = async (file: File | undefined) => {
    if (file === undefined) return;
    const text = await file.text().catch(() => undefined);
    if (text === undefined) return setObjection(words.fileUnreadable);
    const reply = await maker.ask('openFile', { text });
    setObjection(reply.ok ? '' : toldOf(reply.objections));
    const filed = reply.ok ? reply.value.sheets : [];
    setSheets(filed.length > 1 ? filed : []);
    if (reply.ok) lendPictures(reply.value.pictures);
    const [only, ...others] = filed;
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
      <p className="help">{help}</p>
      <p className="objection" aria-live="polite">
        {objection}
      </p>
      {sheets.length === 0 ? null : (
        <fieldset className="change-group">
          <legend className="field-label">{changingWords.whichSheet}</legend>
          <div className="chips pack-sheets">
            {sheets.map((sheet, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: one sheet may stand in a file twice
              <Button key={index} className="chip" onPress={() => void open(sheet.code)}>
                {changingWords.filed(index + 1, sheet)}
              </Button>
            ))}
          </div>
        </fieldset>
      )}
    </div>
  );
});
