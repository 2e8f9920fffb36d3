// The code of the sheet on the table, to be read, marked or copied.
import { memo, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { isTooLongToPrint, shortCode } from '../../sheets/index.ts';
import { words as changingWords } from '../changing/words.ts';
import { words } from '../words.ts';

/** Drawn anew only when it is to show something else. */
export const CopyCode = memo(({ code }: { readonly code: string }) => {
  const [done, setDone] = useState<{ readonly code: string; readonly isCopied: boolean }>();
  const copy = async () => {
    try {
      // Over plain http from another machine there is no clipboard at all.
      await navigator.clipboard.writeText(code);
      setDone({ code, isCopied: true });
    } catch {
      setDone({ code, isCopied: false });
    }
  };
  const outcome = done?.code === code ? done : undefined;
  // What is to be marked by hand stands there as a whole.
  const isWhole = !isTooLongToPrint(code) || outcome?.isCopied === false;
  return (
    <div className="code-line">
      <span className="code-label">{words.codeLabel}</span>
      <output className="code">{isWhole ? code : shortCode(code)}</output>
      <Button className="quiet" isDisabled={code === ''} onPress={() => void copy()}>
        {words.copyCode}
      </Button>
      <span className="done" aria-live="polite">
        {outcome && (outcome.isCopied ? words.copied : words.cannotCopy)}
      </span>
      {isTooLongToPrint(code) ? <p className="help">{changingWords.tooLong}</p> : null}
    </div>
  );
});
