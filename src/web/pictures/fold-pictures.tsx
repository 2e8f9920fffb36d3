// Make's place for the family's own pictures, folded away and fetched when it is opened.
import { Suspense, useState } from 'react';
import { fetched } from '../fetched.tsx';
import { Fold } from '../fold.tsx';
import { withChange, withPictures } from '../recipe/entries.ts';
import type { ControlsProps } from '../sentence/shell-controls.tsx';
import { foldWords } from './fold-title.ts';
import type { ChangeOfChosen } from './picture-list.tsx';

const OwnPictures = fetched(() => import('./own-pictures.tsx'), 'div');

/** Nothing where the activity takes no pictures. */
export function FoldPictures({ card, entries, inForce, edit }: ControlsProps) {
  const [isOpen, setOpen] = useState(false);
  const content = card.parameters.find(({ name }) => name === 'content');
  if (!(content && 'pictures' in content.choices)) return null;
  const change = (chosen: ChangeOfChosen, alone: boolean) =>
    edit((now) => {
      const pictures = chosen(now.pictures ?? []);
      const next = withPictures(now, pictures, alone);
      const isAbout = pictures.length === 0 || inForce.content === 'pictures';
      return isAbout ? next : withChange(next, 'content', 'pictures');
    });
  const sheets = {
    chosen: entries.pictures ?? [],
    alone: entries.onlyOwn === true,
    onChange: change,
  };
  return (
    <Fold
      className="more"
      title={foldWords.title}
      level={2}
      isExpanded={isOpen}
      onExpandedChange={setOpen}
    >
      {isOpen ? (
        <Suspense fallback={<p aria-busy="true">{foldWords.looking}</p>}>
          {card.takesOwnPictures ? null : <p>{foldWords.notHere}</p>}
          <OwnPictures {...(card.takesOwnPictures ? { sheets } : {})} />
        </Suspense>
      ) : null}
    </Fold>
  );
}
