// The family's own pictures: those that are kept, and adding one; on Make also which of them the sheets may show.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import type { Entry } from '../../records/index.ts';
import '../look/pictures.css';
import { Message } from '../children/message.tsx';
import type { Said } from '../children/use-said.ts';
import { AddPicture } from './add-picture.tsx';
import { type ChangeOfChosen, nameOf, PictureList } from './picture-list.tsx';
import { useOwnPictures } from './use-own-pictures.ts';
import { words } from './words.ts';

export interface OwnPicturesProps {
  /** What the sheets may show; absent where no sheets are made. */
  readonly sheets?: {
    readonly chosen: readonly string[];
    readonly alone: boolean;
    readonly onChange: (change: ChangeOfChosen, alone: boolean) => void;
  };
}

interface Done {
  /** The same as long as nothing else is done: it takes the focus once. */
  readonly said: Said;
  /** What was removed, to be brought back. */
  readonly removed?: { readonly name: string; readonly entries: readonly Entry[]; isOn: boolean };
  readonly id?: string;
}

export default function OwnPictures({ sheets }: OwnPicturesProps) {
  const own = useOwnPictures();
  const [done, setDone] = useState<Done>();
  const { chosen = [], alone = false, onChange } = sheets ?? {};
  return (
    <div className="own-pictures">
      <p className="help">{words.about}</p>
      <PictureList
        own={own}
        {...(onChange === undefined
          ? {}
          : { sheets: { chosen, onChange: (change) => onChange(change, alone) } })}
        onRemove={async (kept) => {
          const name = nameOf(kept);
          const removed = await own.remove(kept.id);
          if (typeof removed === 'string') return setDone({ said: { text: removed } });
          const isOn = chosen.includes(kept.id);
          if (isOn) onChange?.((now) => now.filter((id) => id !== kept.id), alone);
          setDone({
            said: { text: words.removed(name) },
            removed: { name, entries: removed, isOn },
            id: kept.id,
          });
        }}
      />
      {onChange === undefined || chosen.length === 0 ? null : (
        <div className="field">
          <ToggleButton
            className="chip"
            isSelected={alone}
            onChange={(next) => onChange((now) => now, next)}
          >
            {words.alone}
          </ToggleButton>
          <p className="help">{words.aloneHelp}</p>
        </div>
      )}
      <Message said={done?.said} />
      {done?.removed === undefined ? null : (
        <Button
          className="plain"
          onPress={async () => {
            const { removed, id } = done;
            if (removed === undefined) return;
            const objection = await own.bringBack(removed.entries);
            if (objection === '' && removed.isOn && id) onChange?.((now) => [...now, id], alone);
            const text = objection === '' ? words.broughtBack(removed.name) : objection;
            setDone({ said: { text } });
          }}
        >
          {words.undo}
        </Button>
      )}
      <AddPicture
        kept={own.kept.map(({ id }) => id)}
        onKeep={async (picture) => {
          const objection = await own.keep(picture);
          if (objection !== '') return objection;
          setDone({ said: { text: words.keptNow(picture.name ?? words.unnamed) } });
          return objection;
        }}
      />
    </div>
  );
}
