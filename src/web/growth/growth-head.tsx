// What all skills together show, and what is worth a look.
import type { Child } from '../../records/index.ts';
import { hashOf } from '../place-names.ts';
import type { GrowthView } from '../planning/cards.ts';
import { words } from './words.ts';

export interface GrowthHeadProps {
  readonly growth: GrowthView;
  readonly child: Child;
}

export function GrowthHead({ growth, child }: GrowthHeadProps) {
  const { sheets, trend, watch, unread } = growth;
  return (
    <div className="growth-head">
      <h2 className="record-title">{words.title(child.nickname)}</h2>
      {sheets === 0 ? (
        <>
          <p className="growth-facts">{words.noRecords(child.nickname)}</p>
          <p>
            <a href={hashOf('record')}>{words.recordFirst}</a>
          </p>
        </>
      ) : (
        <p className="growth-facts">
          {words.facts(growth)} {words.allSkills(trend)}
        </p>
      )}
      {unread === 0 ? null : <p className="reminder">{words.unread(unread)}</p>}
      {watch.length === 0 ? null : (
        <section className="watch" aria-labelledby="worth-a-look">
          <h3 id="worth-a-look" className="watch-title">
            {words.worthALook}
          </h3>
          {watch.map((each) => (
            <p key={each}>{words.watches[each]}</p>
          ))}
        </section>
      )}
    </div>
  );
}
