// The children: choosing whose record it is, adding, changing, deleting.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import type { Child, Id, View } from '../../records/index.ts';
import { ChildForm } from './child-form.tsx';
import { Chips } from './chips.tsx';
import { DeleteChild } from './delete-child.tsx';
import { words } from './words.ts';

export interface ChildrenProps {
  readonly view: View;
  readonly child: Child | undefined;
  readonly onChoose: (id: Id) => void;
  readonly onSaved: (id: Id, nickname: string) => void;
  readonly onDeleted: (nickname: string) => void;
}

type Open = 'nothing' | 'new' | 'change';

export function Children({ view, child, onChoose, onSaved, onDeleted }: ChildrenProps) {
  const [open, setOpen] = useState<Open>('nothing');
  const saved = (id: Id, nickname: string) => {
    setOpen('nothing');
    onSaved(id, nickname);
  };
  return (
    <section className="children" aria-label={words.children}>
      {view.children.length === 0 ? (
        <p className="empty">{words.noChild}</p>
      ) : (
        <Chips
          label={words.chooseChild}
          names={Object.fromEntries(view.children.map(({ id, nickname }) => [id, nickname]))}
          chosen={child === undefined ? [] : [child.id]}
          isNeeded
          onChange={([id]) => id !== undefined && onChoose(id)}
        />
      )}
      {open === 'nothing' ? (
        <div className="row outward">
          <Button className={child === undefined ? 'next' : 'quiet'} onPress={() => setOpen('new')}>
            {words.addChild}
          </Button>
          {child === undefined ? null : (
            <>
              <Button className="quiet" onPress={() => setOpen('change')}>
                {words.changeChild(child.nickname)}
              </Button>
              <DeleteChild
                key={child.id}
                child={child}
                results={view.results.get(child.id)?.length ?? 0}
                onDeleted={() => onDeleted(child.nickname)}
              />
            </>
          )}
        </div>
      ) : (
        <ChildForm
          key={open}
          {...(open === 'change' && child ? { child } : {})}
          onSaved={saved}
          onCancel={() => setOpen('nothing')}
        />
      )}
    </section>
  );
}
