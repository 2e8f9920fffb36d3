// The code of the sheet on the table, to be read, marked or copied.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { isTooLongToPrint, shortCode } from '../../sheets/index.ts';
import { words as changingWords } from '../changing/words.ts';
import { words } from '../words.ts';

export function CopyCode({ code }: { readonly code: string }) {
  const [done, setDone] = useState<{ readonly code: string; readonly words: string }>();
  const copy = () =>
    navigator.clipboard.writeText(code).then(
      () => setDone({ code, words: words.copied }),
      () => setDone({ code, words: words.cannotCopy }),
    );
  return (
    <div className="code-line">
      <span className="code-label">{words.codeLabel}</span>
      <output className="code">{isTooLongToPrint(code) ? shortCode(code) : code}</output>
      <Button className="quiet" isDisabled={code === ''} onPress={() => void copy()}>
        {words.copyCode}
      </Button>
      <span className="done" aria-live="polite">
        {done?.code === code ? done.words : ''}
      </span>
      {isTooLongToPrint(code) ? <p className="help">{changingWords.tooLong}</p> : null}
    </div>
  );
}
