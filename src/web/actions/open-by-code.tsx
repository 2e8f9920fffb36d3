// Makes the sheet of a typed code again; the form for it is fetched apart.
import { memo, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { later } from '../later.ts';
import type { Maker } from '../making/maker.ts';
import { readText, useKept } from '../offline/kept.ts';
import type { Entries } from '../recipe/entries.ts';
import { words } from '../words.ts';

const form = later(() => import('./code-form.tsx'));

export interface OpenByCodeProps {
  readonly maker: Maker;
  readonly onOpen: (entries: Entries) => void;
}

/** Drawn anew only when it is to show something else. */
export const OpenByCode = memo(({ maker, onOpen }: OpenByCodeProps) => {
  const [code, setCode] = useKept('code to open', readText);
  const [objection, setObjection] = useState<string>();
  const [isOpen, setOpen] = useState(false);
  const trigger = useRef<HTMLButtonElement>(null);
  const there = form.use(isOpen);
  const open = async () => {
    const reply = await maker.ask('open', { code });
    if (!reply.ok) {
      setObjection(reply.objections.map(({ sentence }) => sentence).join(' '));
      return;
    }
    setCode('');
    setObjection(undefined);
    setOpen(false);
    onOpen(reply.value);
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
