// Deleting a child for good.
import type { Child } from '../../records/index.ts';
import { DeleteForGood } from '../children/delete-for-good.tsx';
import { store } from '../children/use-records.ts';
import { words } from './words.ts';

export interface DeleteChildProps {
  readonly child: Child;
  readonly results: number;
  readonly onDeleted: () => void;
}

export function DeleteChild({ child, results, onDeleted }: DeleteChildProps) {
  return (
    <DeleteForGood
      name={words.deleteChild(child.nickname)}
      question={words.deleteQuestion(child.nickname, results)}
      facts={words.deleteFacts}
      onDelete={() => store.deleteChild(child.id)}
      onDeleted={onDeleted}
    />
  );
}
