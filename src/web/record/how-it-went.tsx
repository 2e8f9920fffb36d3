// How a sheet went, from the first tap to the saved record.
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Form } from 'react-aria-components/Form';
import type { Child, ResultEntry } from '../../records/index.ts';
import { TextField } from '../children/text-field.tsx';
import { today } from '../children/today.ts';
import { useGround } from '../children/use-ground.ts';
import { objectionOf } from '../children/use-records.ts';
import { MoreToNote } from './more-to-note.tsx';
import { Outcomes, type OutcomesProps } from './outcomes.tsx';
import { isOpen, resultEntryOf } from './result-draft.ts';
import { words } from './words.ts';

export interface HowItWentProps extends OutcomesProps {
  readonly child: Child;
  /** Whether the focus goes here once: not while someone may still be typing a code. */
  readonly takesFocus: boolean;
  readonly onTookFocus: () => void;
  readonly onSaved: (result: ResultEntry) => void;
}

export function HowItWent(props: HowItWentProps) {
  const { child, takesFocus, onTookFocus, onSaved, ...outcomes } = props;
  const { append } = useGround();
  const { sheet, draft, change } = outcomes;
  const [objection, setObjection] = useState('');
  // A second press while the first is being written must not record the sheet twice.
  const isSaving = useRef(false);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (!takesFocus) return;
    form.current?.querySelector<HTMLElement>('.chip')?.focus();
    onTookFocus();
  }, [takesFocus, onTookFocus]);
  const changed: OutcomesProps['change'] = (part) => {
    setObjection('');
    change(part);
  };
  const save = async (event: FormEvent) => {
    event.preventDefault();
    if (isOpen(draft, sheet.tasks)) return setObjection(words.nothingChosen);
    if (isSaving.current) return;
    isSaving.current = true;
    const saved = await append([resultEntryOf(draft, child.id, sheet.code, sheet.tasks)]);
    isSaving.current = false;
    if (!saved.ok) return setObjection(await objectionOf(saved));
    const [first] = saved.value;
    if (first?.kind === 'result') onSaved(first);
  };
  return (
    <Form ref={form} className="how-it-went" onSubmit={(event) => void save(event)}>
      <Outcomes {...outcomes} change={changed} />
      <TextField
        label={words.day}
        type="date"
        latest={today()}
        value={draft.day}
        onChange={(day) => changed({ day })}
      />
      <MoreToNote {...outcomes} change={changed} />
      <div className="press">
        <p className="objection" role="alert">
          {objection}
        </p>
        <Button type="submit" className="next">
          {words.saveRecord}
        </Button>
      </div>
    </Form>
  );
}
