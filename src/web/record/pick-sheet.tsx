// The sheets of today and of the last days as buttons: one tap puts the code in.
import type { Child } from '../../records/index.ts';
import { Chips } from '../children/chips.tsx';
import type { Maker } from '../making/maker.ts';
import type { Catalogue } from '../making/protocol.ts';
import type { Planner } from '../planning/planner.ts';
import { capital } from '../words.ts';
import { useSheetNames } from './sheet-names.ts';
import { type Pick, usePicks } from './use-picks.ts';
import { words } from './words.ts';

export interface PickSheetProps {
  readonly maker: Maker;
  readonly planner: Planner;
  readonly catalogue: Catalogue | undefined;
  readonly child: Child;
  /** The code of the sheet that is being recorded, or empty. */
  readonly code: string;
  readonly onPick: (code: string) => void;
}

export function PickSheet({ maker, planner, catalogue, child, code, onPick }: PickSheetProps) {
  const { today, earlier, isLooking } = usePicks(planner, child);
  const picks = [...today, ...earlier];
  const nameOfSheet = useSheetNames(
    maker,
    catalogue,
    picks.map((pick) => pick.code),
  );
  const namesOf = (some: readonly Pick[]) =>
    Object.fromEntries(
      some.map((pick) => {
        const name = capital(nameOfSheet(pick.code));
        return [pick.code, pick.isDone ? words.recorded(name) : name];
      }),
    );
  const groups = [
    { label: words.ofToday, some: today },
    { label: words.ofLastDays, some: earlier },
  ];
  if (picks.length === 0 && !isLooking) return null;
  return (
    <div className="picks">
      {isLooking ? (
        <div className="field">
          <span className="field-label">{words.ofToday}</span>
          <p className="help picks-awaited">{words.lookingUpToday}</p>
        </div>
      ) : null}
      {groups.map(({ label, some }) =>
        some.length === 0 ? null : (
          <Chips
            key={label}
            label={label}
            names={namesOf(some)}
            chosen={some.some((pick) => pick.code === code) ? [code] : []}
            isNeeded
            onChange={([picked]) => picked !== undefined && onPick(picked)}
          />
        ),
      )}
    </div>
  );
}
