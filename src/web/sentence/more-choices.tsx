// What else can be asked for, folded away until wanted, and fetched apart.
import { useState } from 'react';
import { Fold } from '../fold.tsx';
import { later } from '../later.ts';
import { words } from '../words.ts';
import type { MoreChoicesProps } from './further-choices.tsx';

const further = later(() => import('./further-choices.tsx'));

export function MoreChoices({ ink, ...props }: MoreChoicesProps) {
  // What nobody sees is neither drawn nor asked for.
  const [isOpen, setOpen] = useState(false);
  const there = further.use(isOpen);
  return (
    <Fold className="more" title={words.more} level={2} onExpandedChange={setOpen}>
      {isOpen && there ? <there.FurtherChoices {...props} ink={ink} /> : null}
    </Fold>
  );
}
