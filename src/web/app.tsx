// The app: its name, its places, and the screen that is open.
import { lazy, Suspense } from 'react';
import { MakeScreen } from './make-screen.tsx';
import type { Maker } from './making/maker.ts';
import { useCatalogue } from './making/use-shown.ts';
import { Places, usePlace } from './places.tsx';
import { words } from './words.ts';

/** Fetched with its store when it is first gone to, so that Make is there as soon as ever. */
const RecordScreen = lazy(() => import('./record/record-screen.tsx'));

export function App({ maker }: { readonly maker: Maker }) {
  const catalogue = useCatalogue(maker);
  const places = usePlace();
  return (
    <>
      <header className="head">
        <h1>{words.appName}</h1>
        <p>{words.tagline}</p>
        <Places {...places} />
      </header>
      {places.place === 'make' ? (
        <MakeScreen maker={maker} catalogue={catalogue} />
      ) : (
        <Suspense fallback={<main aria-busy="true">{words.opening}</main>}>
          <RecordScreen maker={maker} catalogue={catalogue} />
        </Suspense>
      )}
      <footer className="foot">
        <p>{words.local}</p>
        {catalogue === undefined ? null : <p>{catalogue.credit}.</p>}
      </footer>
    </>
  );
}
