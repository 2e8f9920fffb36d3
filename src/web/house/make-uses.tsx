// On Make: what the pack on the desk takes of the house.
import type { Group } from '../making/protocol.ts';
import type { Planner } from '../planning/planner.ts';
import type { Entries } from '../recipe/entries.ts';
import '../look/house.css';
import type { House } from './house.ts';
import { UseLines } from './use-lines.tsx';
import { useUses } from './use-uses.ts';
import { words } from './words.ts';

/** More are made only to be printed: counting them would keep the worker from the other screens. */
const MOST_COUNTED = 200;

export interface MakeUsesProps {
  readonly planner: Planner;
  readonly house: House;
  readonly entries: Entries;
  readonly group: Group | undefined;
}

export function MakeUses({ planner, house: { stock }, entries, group }: MakeUsesProps) {
  const isCounted = entries.sheets <= MOST_COUNTED;
  const asked =
    stock === undefined || !isCounted
      ? undefined
      : { stock, recipe: entries, ...(group === undefined ? {} : { group }) };
  const uses = useUses(planner, asked);
  if (stock === undefined || (isCounted && uses === undefined)) return null;
  return (
    <section className="house" aria-label={words.title}>
      <h2 className="field-label">{words.title}</h2>
      {isCounted && uses !== undefined ? (
        <UseLines uses={uses} />
      ) : (
        <p className="help">{words.tooMany(MOST_COUNTED)}</p>
      )}
    </section>
  );
}
