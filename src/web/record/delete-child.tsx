// Deleting a child for good, after a plain question that says what goes.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Dialog, DialogTrigger } from 'react-aria-components/Dialog';
import { Heading } from 'react-aria-components/Heading';
import { Popover } from 'react-aria-components/Popover';
import type { Child } from '../../records/index.ts';
import { objectionOf, store } from './use-records.ts';
import { words } from './words.ts';

export interface DeleteChildProps {
  readonly child: Child;
  readonly results: number;
  readonly onDeleted: () => void;
}

export function DeleteChild({ child, results, onDeleted }: DeleteChildProps) {
  const [objection, setObjection] = useState('');
  const deleteForGood = async (close: () => void) => {
    const deleted = await store.deleteChild(child.id);
    if (!deleted.ok) return setObjection(objectionOf(deleted));
    close();
    onDeleted();
  };
  return (
    <DialogTrigger>
      <Button className="quiet">{words.deleteChild(child.nickname)}</Button>
      <Popover className="drawer" placement="bottom start">
        <Dialog role="alertdialog" className="question">
          {({ close }) => (
            <>
              <Heading slot="title" className="drawer-title">
                {words.deleteQuestion(child.nickname, results)}
              </Heading>
              <p>{words.deleteFacts}</p>
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
