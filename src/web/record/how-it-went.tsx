// How a sheet went, from the first tap to the saved record.
import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Form } from 'react-aria-components/Form';
import type { Child, ResultEntry } from '../../records/index.ts';
import { TextField } from '../children/text-field.tsx';
import { today } from '../children/today.ts';
import { useGround } from '../children/use-ground.ts';
import { objectionOf } from '../children/use-records.ts';
import { useOneAtATime } from '../use-one-at-a-time.ts';
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
  const save = useOneAtATime(async () => {
    if (isOpen(draft, sheet.tasks)) return setObjection(words.nothingChosen);
    const saved = await append([resultEntryOf(draft, child.id, sheet.code, sheet.tasks)]);
    if (!saved.ok) return setObjection(await objectionOf(saved));
    const [first] = saved.value;
    if (first?.kind === 'result') onSaved(first);
  });
  return (
    <Form
      ref={form}
      className="how-it-went"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
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
