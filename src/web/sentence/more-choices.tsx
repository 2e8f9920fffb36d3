// What else can be asked for, folded away until wanted, and fetched apart.
import { memo, useDeferredValue, useState } from 'react';
import { Fold } from '../fold.tsx';
import { later } from '../later.ts';
import type { ActivityCard } from '../making/protocol.ts';
import { readYes, useKept } from '../offline/kept.ts';
import { LAYOUT_CHOICES } from '../recipe/entries.ts';
import { isInSentence, words } from '../words.ts';
import type { MoreChoicesProps } from './further-choices.tsx';

const further = later(() => import('./further-choices.tsx'));

export function MoreChoices({ ink, ...props }: MoreChoicesProps) {
  const [isOpen, setOpen] = useKept('more choices', readYes);
  const isRefused = isAnyRefused(props);
  const [wasRefused, setWasRefused] = useState(false);
  if (isRefused !== wasRefused) {
    setWasRefused(isRefused);
    // What is refused is told beside its control, where it is to be seen.
    if (isRefused) setOpen(true);
  }
  const there = useDeferredValue(further.use(isOpen));
  const drawnFor = useDeferredValue(props.card);
  return (
    <Fold
      className="more"
      title={words.more}
      level={2}
      isExpanded={isOpen}
      onExpandedChange={setOpen}
    >
      {there === undefined ? null : (
        <Folded
          {...props}
          // What nobody sees is not asked for.
          ink={isOpen ? ink : undefined}
          there={there}
          isOpen={isOpen}
          drawnFor={drawnFor}
        />
      )}
    </Fold>
  );
}

interface FoldedProps extends MoreChoicesProps {
  readonly there: typeof import('./further-choices.tsx');
  readonly isOpen: boolean;
  /** The activity, once all that is in view is drawn for it. */
  readonly drawnFor: ActivityCard;
}

/**
 * It is there while it is folded away, so that who looks for a word of it in the browser finds it and has it opened; then
 * it is drawn anew for another activity only.
 */
const Folded = memo(
  ({ there, isOpen: _isOpen, drawnFor: _drawnFor, ...props }: FoldedProps) => (
    <there.FurtherChoices {...props} />
  ),
  (before, next) => !(before.isOpen || next.isOpen) && before.drawnFor === next.drawnFor,
);

/** Whether anything is refused that one of these choices holds. */
function isAnyRefused({ card, objectionTo }: Omit<MoreChoicesProps, 'ink'>): boolean {
  const names = card.parameters.map(({ name }) => name).filter((name) => !isInSentence(name));
  return [...names, ...LAYOUT_CHOICES].some((name) => objectionTo(name) !== undefined);
}
