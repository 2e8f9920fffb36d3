// The children: choosing whose record it is, adding, changing, deleting.
import { Button } from 'react-aria-components/Button';
import type { Id, View } from '../../records/index.ts';
import { ChildChoice } from '../children/child-chooser.tsx';
import { TryDemo } from '../children/try-demo.tsx';
import { useGround } from '../children/use-ground.ts';
import { useKept } from '../offline/kept.ts';
import { ChildForm } from './child-form.tsx';
import { DeleteChild } from './delete-child.tsx';
import { words } from './words.ts';

export interface ChildrenProps {
  readonly view: View;
  readonly onChoose: () => void;
  readonly onSaved: (id: Id, nickname: string) => void;
  readonly onDeleted: (nickname: string) => void;
}

const OPEN = ['nothing', 'new', 'change'] as const;
type Open = (typeof OPEN)[number];

export function Children({ view, onChoose, onSaved, onDeleted }: ChildrenProps) {
  const { child, shelf } = useGround();
  const [open, setOpen] = useKept('open form of a child', readOpen);
  const saved = (id: Id, nickname: string) => {
    setOpen('nothing');
    onSaved(id, nickname);
  };
  return (
    <section className="children" aria-label={words.children}>
      {child === undefined ? (
        <p className="empty">{shelf === 'demo' ? words.noChildOfDemo : words.noChild}</p>
      ) : (
        <ChildChoice label={words.chooseChild} onChoose={onChoose} />
      )}
      {open === 'nothing' ? (
        <div className="row outward">
          <AddChild onAdd={() => setOpen('new')} />
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

function readOpen(left: unknown): Open {
  return OPEN.find((open) => open === left) ?? 'nothing';
}

/** Not among invented children: a real one added there would go with them. */
function AddChild({ onAdd }: { readonly onAdd: () => void }) {
  const { child, shelf } = useGround();
  if (shelf === 'demo') return null;
  return (
    <>
      <Button className={child === undefined ? 'next' : 'quiet'} onPress={onAdd}>
        {words.addChild}
      </Button>
      {child === undefined ? <TryDemo /> : null}
    </>
  );
}
