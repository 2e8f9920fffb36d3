// What is mixed up with what, counted; what came up but once or twice is folded away.

import { Fold } from '../fold.tsx';
import type { GrowthView } from '../planning/cards.ts';
import { words } from './words.ts';

type Pairs = GrowthView['pairs'];

/** A pair that came up no more often is folded away, unless it is more than chance: common practice, no source. */
const SELDOM = 2;

export function MixedUp({ pairs }: { readonly pairs: Pairs }) {
  const often = pairs.filter(({ times, isConfused }) => isConfused || times > SELDOM);
  const seldom = pairs.filter((pair) => !often.includes(pair));
  return (
    <section className="mixed-up" aria-labelledby="mixed-up">
      <h3 id="mixed-up" className="record-title">
        {words.mixedUp}
      </h3>
      <p>{pairs.length === 0 ? words.nothingMixedUp : words.mixedUpFacts}</p>
      {often.length === 0 ? null : <PairTable caption={words.pairs} pairs={often} />}
      {seldom.length === 0 ? null : (
        <Fold title={words.seldom(seldom.length)} level={4} isOutward>
          <PairTable caption={words.seldom(seldom.length)} pairs={seldom} />
        </Fold>
      )}
    </section>
  );
}

function PairTable({ caption, pairs }: { readonly caption: string; readonly pairs: Pairs }) {
  return (
    <table className="figures">
      <caption className="unseen">{caption}</caption>
      <thead className="unseen">
        <tr>
          <th scope="col">{words.pair}</th>
          <th scope="col">{words.howOften}</th>
        </tr>
      </thead>
      <tbody>
        {pairs.map((pair) => (
          <tr key={pair.pair.join(' ')}>
            <th scope="row">{words.pairName(pair)}</th>
            <td>
              {words.pairCounts(pair)}
              {pair.isConfused ? <strong className="by-more">{words.confused}</strong> : null}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
