// Makes the sheet of a typed code again; the form for it is fetched apart.
import { memo, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { later } from '../later.ts';
import { readText, useKept } from '../offline/kept.ts';
import { words } from '../words.ts';

const form = later(() => import('./code-form.tsx'));

export interface OpenByCodeProps {
  /** Goes to the sheet of the code; answers why it cannot, in words, or nothing. */
  readonly onCode: (code: string) => Promise<string>;
}

/** Drawn anew only when it is to show something else. */
export const OpenByCode = memo(({ onCode }: OpenByCodeProps) => {
  const [code, setCode] = useKept('code to open', readText);
  const [objection, setObjection] = useState<string>();
  const [isOpen, setOpen] = useState(false);
  const trigger = useRef<HTMLButtonElement>(null);
  const there = form.use(isOpen);
  const open = async () => {
    const fault = await onCode(code);
    setObjection(fault === '' ? undefined : fault);
    if (fault !== '') return;
    setCode('');
    setOpen(false);
  };
  return (
    <>
      <Button
        ref={trigger}
        className="quiet"
        aria-haspopup="dialog"
        aria-expanded={isOpen}
        onPress={() => setOpen(true)}
      >
        {words.openByCode}
      </Button>
      {there === undefined ? null : (
        <there.CodeForm
          trigger={trigger}
          isOpen={isOpen}
          onOpenChange={setOpen}
          code={code}
          onChange={setCode}
          objection={objection}
          onDone={() => void open()}
        />
      )}
    </>
  );
});
