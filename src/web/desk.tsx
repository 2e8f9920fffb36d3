// Beside the page: the recipe to edit, and what can be done with it.
import { useCallback, useState } from 'react';
import type { Values } from '../activities/index.ts';
import { CopyCode } from './actions/copy-code.tsx';
import { GroupNames } from './actions/group-names.tsx';
import { HowMade } from './actions/how-made.tsx';
import { Notches } from './actions/notches.tsx';
import { OpenByCode } from './actions/open-by-code.tsx';
import { OpenPackFile } from './actions/open-pack-file.tsx';
import { PressButtons } from './actions/press-buttons.tsx';
import { TrueSize } from './actions/true-size.tsx';
import type { GroupState } from './actions/use-group.ts';
import { useRoom } from './actions/use-room.ts';
import { PrintDoubts } from './changing/print-doubts.tsx';
import type { House } from './house/house.ts';
import { MakeUses } from './house/make-uses.tsx';
import type { Maker } from './making/maker.ts';
import type { ActivityCard, Catalogue, Objection, Shown } from './making/protocol.ts';
import { sentencesOf } from './making/reply-form.ts';
import { FoldPictures } from './pictures/fold-pictures.tsx';
import type { Planner } from './planning/planner.ts';
import type { Entries } from './recipe/entries.ts';
import type { Edit } from './recipe/use-recipe.ts';
import { MoreChoices } from './sentence/more-choices.tsx';
import { NameLetters } from './sentence/name-letters.tsx';
import { objectionTo } from './sentence/objections.ts';
import { Sentence } from './sentence/sentence.tsx';
import { Unplaced } from './sentence/unplaced.tsx';

export interface DeskProps {
  readonly maker: Maker;
  readonly planner: Planner;
  readonly catalogue: Catalogue;
  readonly entries: Entries;
  /** The entries as sheets are made from them. */
  readonly made: Entries;
  readonly house: House;
  readonly group: GroupState;
  readonly shown: Shown | undefined;
  readonly objections: readonly Objection[];
  /** Whether the doubts are those of what would be printed now. */
  readonly isSettled: boolean;
  readonly edit: Edit;
  readonly turn: (entries: Entries) => void;
}

export function Desk(props: DeskProps) {
  const { maker, planner, catalogue, entries, made, house, shown, objections, edit, turn } = props;
  const { written, write, group, rested, isAside } = props.group;
  const openSheet = useCallback(
    async (code: string) => {
      const reply = await maker.ask('open', { code });
      if (reply.ok) turn(reply.value);
      return reply.ok ? '' : sentencesOf(reply.objections);
    },
    [maker, turn],
  );
  const isRefused = objections.length > 0;
  const isAsked = rested !== undefined && shown !== undefined && !isRefused;
  const room = useRoom(planner, isAsked ? { recipe: made, group: rested } : undefined);
  // A yes holds for the sheets as they were then.
  const [sure, setSure] = useState('');
  const [first] = catalogue.activities;
  const card = catalogue.activities.find(({ id }) => id === entries.activity) ?? first;
  if (card === undefined) return null;
  const doubts = shown?.doubts ?? [];
  const doubtKey = JSON.stringify(entries.changed);
  const isSure = sure === doubtKey;
  const controls = {
    catalogue,
    card,
    entries,
    inForce: valuesInForce(card, entries, isRefused ? undefined : shown),
    objectionTo: (control: string) => objectionTo(objections, control),
    edit,
  };
  return (
    <>
      <div>
        <Sentence {...controls} />
        <Unplaced objections={objections} card={card} />
      </div>
      <NameLetters
        {...controls}
        notes={shown?.nameNotes ?? []}
        isForGroup={group !== undefined}
        isWanted={shown !== undefined}
      />
      <MoreChoices
        {...controls}
        house={house}
        ink={
          shown && !isRefused
            ? { maker, entries: made, sheet: shown.sheet, group: rested }
            : undefined
        }
      />
      <FoldPictures {...controls} />
      <GroupNames
        group={written}
        isAside={isAside}
        objection={objectionTo(objections, 'group') ?? room}
        onChange={write}
      />
      <HowMade made={entries.made} quick={entries.quick} edit={edit} house={house} />
      <PrintDoubts
        doubts={doubts}
        isSure={isSure}
        onChange={(yes) => setSure(yes ? doubtKey : '')}
      />
      <PressButtons
        what={{ entries: made, ...(group ? { group } : {}) }}
        isReady={
          shown !== undefined && !isRefused && props.isSettled && (doubts.length === 0 || isSure)
        }
      />
      <TrueSize maker={maker} paper={entries.paper} />
      {isRefused ? null : (
        <MakeUses planner={planner} house={house} entries={made} group={rested} />
      )}
      <Notches maker={maker} entries={made} turn={turn} />
      <div className="codes">
        <CopyCode code={shown?.code ?? ''} />
        <OpenByCode onCode={openSheet} />
        <OpenPackFile maker={maker} onCode={openSheet} />
      </div>
    </>
  );
}

/** The values of the page on the table if it is of the same step, else what the step asks for. */
function valuesInForce(card: ActivityCard, { step }: Entries, shown: Shown | undefined): Values {
  const isSame = shown?.activity === card.id && shown.step === step;
  return (isSame ? shown.values : card.steps[step - 1]?.values) ?? {};
}
