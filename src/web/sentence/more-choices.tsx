// What else can be asked for, folded away until wanted, and fetched apart.
import { useState } from 'react';
import { Fold } from '../fold.tsx';
import type { House } from '../house/house.ts';
import { later } from '../later.ts';
import { words } from '../words.ts';
import type { ControlsProps } from './shell-controls.tsx';
import type { InkAsked } from './use-inked.ts';

const further = later(() => import('./further-choices.tsx'));

export interface MoreChoicesProps extends ControlsProps {
  readonly house: House;
  /** Of which sheet it can be told how much is inked; absent: of none. */
  readonly ink: InkAsked | undefined;
}

export function MoreChoices({ ink, ...props }: MoreChoicesProps) {
  // What nobody sees is not asked for.
  const [isOpen, setOpen] = useState(false);
  const there = further.use(isOpen);
  return (
    <Fold className="more" title={words.more} level={2} onExpandedChange={setOpen}>
      {there === undefined ? null : (
        <there.FurtherChoices {...props} ink={isOpen ? ink : undefined} />
      )}
    </Fold>
  );
}
