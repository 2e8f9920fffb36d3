// The family's own pictures: those that are kept, and adding one; on Make also which of them the sheets may show.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import type { Entry } from '../../records/index.ts';
import '../look/pictures.css';
import { Message } from '../children/message.tsx';
import { AddPicture } from './add-picture.tsx';
import { nameOf, PictureList } from './picture-list.tsx';
import { useOwnPictures } from './use-own-pictures.ts';
import { words } from './words.ts';

export interface OwnPicturesProps {
  /** What the sheets may show; absent where no sheets are made. */
  readonly sheets?: {
    readonly chosen: readonly string[];
    readonly alone: boolean;
    readonly onChange: (chosen: readonly string[], alone: boolean) => void;
  };
}

interface Done {
  readonly text: string;
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
          : { sheets: { chosen, onChange: (next) => onChange(next, alone) } })}
        onRemove={async (kept) => {
          const name = nameOf(kept);
          const removed = await own.remove(kept.id);
          if (typeof removed === 'string') return setDone({ text: removed });
          const isOn = chosen.includes(kept.id);
          if (isOn)
            onChange?.(
              chosen.filter((id) => id !== kept.id),
              alone,
            );
          setDone({
            text: words.removed(name),
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
            onChange={(next) => onChange(chosen, next)}
          >
            {words.alone}
          </ToggleButton>
          <p className="help">{words.aloneHelp}</p>
        </div>
      )}
      {done === undefined ? null : <Message key={done.text} said={{ text: done.text }} />}
      {done?.removed === undefined ? null : (
        <Button
          className="plain"
          onPress={async () => {
            const { removed, id } = done;
            if (removed === undefined) return;
            const objection = await own.bringBack(removed.entries);
            if (objection === '' && removed.isOn && id) onChange?.([...chosen, id], alone);
            setDone({ text: objection === '' ? words.broughtBack(removed.name) : objection });
          }}
        >
          {words.undo}
        </Button>
      )}
      <AddPicture
        kept={own.kept.map(({ id }) => id)}
        onKeep={async (picture) => {
          const objection = await own.keep(picture);
          if (objection === '') setDone({ text: words.keptNow(picture.name ?? words.unnamed) });
          return objection;
        }}
      />
    </div>
  );
}
