// The app: its name, and the screen that is open.

import { MakeScreen } from './make-screen.tsx';
import type { Maker } from './making/maker.ts';
import { useCatalogue } from './making/use-shown.ts';
import { words } from './words.ts';

export function App({ maker }: { readonly maker: Maker }) {
  const catalogue = useCatalogue(maker);
  return (
    <>
      <header className="head">
        <h1>{words.appName}</h1>
        <p>{words.tagline}</p>
      </header>
      <MakeScreen maker={maker} catalogue={catalogue} />
      <footer className="foot">
        <p>{words.local}</p>
        {catalogue === undefined ? null : <p>{catalogue.credit}.</p>}
      </footer>
    </>
  );
}
