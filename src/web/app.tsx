// The app: its name, and the screen that is open.

import { MakeScreen } from './make-screen.tsx';
import type { Maker } from './making/maker.ts';
import { words } from './words.ts';

export function App({ maker }: { readonly maker: Maker }) {
  return (
    <>
      <header className="head">
        <h1>{words.appName}</h1>
        <p>{words.tagline}</p>
      </header>
      <MakeScreen maker={maker} />
      <footer className="foot">{words.local}</footer>
    </>
  );
}
