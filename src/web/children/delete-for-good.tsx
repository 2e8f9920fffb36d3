// Deleting something for good, after a plain question that says what goes.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog, DialogTrigger } from 'react-aria-components/Dialog';
import { Heading } from 'react-aria-components/Heading';
import { Popover } from 'react-aria-components/Popover';
import type { Result } from '../../base/index.ts';
import { useOneAtATime } from '../use-one-at-a-time.ts';
import { objectionOf } from './use-records.ts';
import { words } from './words.ts';

export interface DeleteForGoodProps {
  /** What the button says that asks the question. */
  readonly name: string;
  readonly question: string;
  readonly facts: string;
  readonly onDelete: () => Promise<Result<unknown>>;
  readonly onDeleted: () => void;
}

export function DeleteForGood({ name, question, facts, onDelete, onDeleted }: DeleteForGoodProps) {
  const [objection, setObjection] = useState('');
  const deleteForGood = useOneAtATime(async (close: () => void) => {
    const deleted = await onDelete();
    if (!deleted.ok) return setObjection(await objectionOf(deleted));
    close();
    onDeleted();
  });
  return (
    <DialogTrigger onOpenChange={() => setObjection('')}>
      <Button className="quiet">{name}</Button>
      <Popover className="drawer" placement="bottom start">
        <Dialog role="alertdialog" className="question">
          {({ close }) => (
            <>
              <Heading slot="title" className="drawer-title">
                {question}
              </Heading>
              <p>{facts}</p>
              <p className="objection" role="alert">
                {objection}
              </p>
              <div className="row">
                <Button className="plain" onPress={() => void deleteForGood(close)}>
                  {words.deleteForGood}
                </Button>
                <Button className="quiet" autoFocus onPress={close}>
                  {words.keep}
                </Button>
              </div>
            </>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
