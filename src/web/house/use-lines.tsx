// What sheets take against what there is, a line for each thing; what is missing is told in words.
import type { Use } from '../../supplies/index.ts';
import '../look/house.css';
import { words } from './words.ts';

export function UseLines({ uses }: { readonly uses: readonly Use[] }) {
  if (uses.length === 0) return <p className="help">{words.nothing}</p>;
  return (
    <ul className="uses" aria-label={words.title}>
      {uses.map((use) => (
        <li key={words.thing(use)}>
          {words.thing(use)} <span className="use-count">{words.count(use)}</span>
          {use.uses > use.has ? <strong>{words.missing(use)}</strong> : null}
        </li>
      ))}
    </ul>
  );
}
