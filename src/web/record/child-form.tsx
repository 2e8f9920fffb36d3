// Adding or changing a child: a nickname is enough.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { Form } from 'react-aria-components/Form';
import { Heading } from 'react-aria-components/Heading';
import type { Refusal } from '../../base/index.ts';
import type { Child, Id } from '../../records/index.ts';
import { Chips } from '../children/chips.tsx';
import { TextField } from '../children/text-field.tsx';
import { useGround } from '../children/use-ground.ts';
import { objectionOf } from '../children/use-records.ts';
import { Fold } from '../fold.tsx';
import { useKept } from '../offline/kept.ts';
import { useOneAtATime } from '../use-one-at-a-time.ts';
import { type ChildDraft, childEntryOf, readChildDraft } from './child-draft.ts';
import { words } from './words.ts';

export interface ChildFormProps {
  /** Absent: a new one. */
  readonly child?: Child;
  readonly onSaved: (id: Id, nickname: string) => void;
  readonly onCancel: () => void;
}

interface Objections {
  readonly nickname?: string;
  readonly birthMonth?: string;
  readonly languages?: string;
  readonly other?: string;
}

export function ChildForm({ child, onSaved, onCancel }: ChildFormProps) {
  const { append } = useGround();
  const [draft, setDraft] = useKept(`form of child ${child?.id ?? 'new'}`, (left) =>
    readChildDraft(left, child),
  );
  const [objections, setObjections] = useState<Objections>({});
  const change = (part: Partial<ChildDraft>) => setDraft((now) => ({ ...now, ...part }));
  const save = useOneAtATime(async () => {
    if (draft.nickname.trim() === '') return setObjections({ nickname: words.nicknameMissing });
    const entry = childEntryOf(draft, child);
    const saved = entry.ok ? await append([entry.value]) : entry;
    if (!saved.ok) return setObjections(await objectionsOf(saved.refusals));
    const [first] = saved.value;
    if (first?.kind === 'child') onSaved(first.child, draft.nickname.trim());
  });
  return (
    <Form
      className="drawer-front"
      onSubmit={(event) => {
        event.preventDefault();
        void save();
      }}
    >
      <Heading level={2} className="drawer-title">
        {child === undefined ? words.addChild : words.changeChild(child.nickname)}
      </Heading>
      <TextField
        label={words.nickname}
        help={words.nicknameHelp}
        value={draft.nickname}
        most={40}
        autoFocus
        objection={objections.nickname}
        onChange={(nickname) => change({ nickname })}
      />
      <p className="aside">{words.restIsFree}</p>
      <Facts draft={draft} objections={objections} change={change} />
      <p className="objection" role="alert">
        {objections.other}
      </p>
      <div className="row">
        <Button type="submit" className="next">
          {words.save}
        </Button>
        <Button className="quiet" onPress={onCancel}>
          {words.cancel}
        </Button>
      </div>
    </Form>
  );
}

interface FactsProps {
  readonly draft: ChildDraft;
  readonly objections: Objections;
  readonly change: (part: Partial<ChildDraft>) => void;
}

function Facts({ draft, objections, change }: FactsProps) {
  return (
    <>
      <TextField
        label={words.birthMonth}
        help={words.birthMonthHelp}
        type="month"
        value={draft.birthMonth}
        objection={objections.birthMonth}
        onChange={(birthMonth) => change({ birthMonth })}
      />
      <Chips
        label={words.hand}
        help={words.handHelp}
        names={words.hands}
        chosen={draft.writingHand}
        onChange={(writingHand) => change({ writingHand })}
      />
      <TextField
        label={words.languages}
        help={words.languagesHelp}
        value={draft.languages}
        most={200}
        objection={objections.languages}
        onChange={(languages) => change({ languages })}
      />
      <Chips
        label={words.vision}
        help={words.visionHelp}
        names={words.visions}
        chosen={draft.colourVision}
        onChange={(colourVision) => change({ colourVision })}
      />
      <Deeds draft={draft} change={change} />
    </>
  );
}

function Deeds({ draft, change }: Pick<FactsProps, 'draft' | 'change'>) {
  return (
    <Fold title={words.deeds} level={3} isOutward>
      <Chips
        label={words.deedsLabel}
        help={words.deedsHelp}
        names={words.deedNames}
        several
        chosen={draft.deeds}
        onChange={(deeds) => change({ deeds })}
      />
    </Fold>
  );
}

/** Each refusal at the field that it is about. */
async function objectionsOf(refusals: readonly Refusal[]): Promise<Objections> {
  const [first] = refusals;
  if (first === undefined) return {};
  if (first.at === 'languages' && first.code === 'unreadable') {
    return { languages: words.languageUnknown(String(first.got)) };
  }
  if (first.at.endsWith('birthMonth')) return { birthMonth: words.birthMonthWrong };
  return { other: await objectionOf({ ok: false, refusals }) };
}
