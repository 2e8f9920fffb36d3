// Above every screen while invented children are in view: that they are, and the ways out.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { DeleteForGood } from './delete-for-good.tsx';
import { Message } from './message.tsx';
import { useGround } from './use-ground.ts';
import type { Said } from './use-said.ts';
import { words } from './words.ts';

export function DemoBanner() {
  const { shelf, showShelf, removeDemo } = useGround();
  const [said, setSaid] = useState<Said>();
  if (shelf === 'real' && said === undefined) return null;
  return (
    <aside className="demo" aria-label={words.demo}>
      {shelf === 'real' ? (
        <Message said={said} />
      ) : (
        <>
          <p>{words.demoFacts}</p>
          <div className="row">
            <Button
              className="plain"
              onPress={() => {
                showShelf('real');
                setSaid({ text: words.backAtOwn });
              }}
            >
              {words.backToOwn}
            </Button>
            <DeleteForGood
              name={words.removeDemo}
              question={words.removeQuestion}
              facts={words.removeFacts}
              onDelete={removeDemo}
              onDeleted={() => setSaid({ text: words.demoRemoved })}
            />
          </div>
        </>
      )}
    </aside>
  );
}
