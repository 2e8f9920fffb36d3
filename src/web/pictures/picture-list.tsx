// The pictures that are kept: each with its name, whether the sheets may show it, and a way to remove it.
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { ToggleButton } from 'react-aria-components/ToggleButton';
import { LONGEST_PICTURE_NAME, MOST_OWN_ON_SHEET } from '../../figures/index.ts';
import type { KeptPicture } from '../../records/index.ts';
import { TextField } from '../children/text-field.tsx';
import { PictureView } from './picture-view.tsx';
import type { OwnPictures } from './use-own-pictures.ts';
import { words } from './words.ts';

/** How the pictures on the sheets change: removing one takes a while, in which others may be chosen. */
export type ChangeOfChosen = (now: readonly string[]) => readonly string[];

/** Which of them the sheets may show; absent where no sheets are made. */
interface PicturesChosen {
  readonly chosen: readonly string[];
  readonly onChange: (change: ChangeOfChosen) => void;
}

export interface PictureListProps {
  readonly own: OwnPictures;
  readonly sheets?: PicturesChosen | undefined;
  readonly onRemove: (kept: KeptPicture) => void;
}

export function PictureList({ own, sheets, onRemove }: PictureListProps) {
  if (!own.isKnown) return <p aria-busy="true">{words.looking}</p>;
  if (own.kept.length === 0) return <p>{words.none}</p>;
  const isFull = (sheets?.chosen.length ?? 0) >= MOST_OWN_ON_SHEET;
  return (
    <>
      <ul className="own-list" aria-label={words.kept}>
        {own.kept.map((kept) => (
          <li key={kept.id}>
            <PictureView picture={kept.picture} label={nameOf(kept)} />
            <Named kept={kept} keep={own.keep} />
            <div className="row">
              {sheets === undefined ? null : <OnSheets kept={kept} {...sheets} />}
              <Button
                className="plain"
                aria-label={words.removeOne(nameOf(kept))}
                onPress={() => onRemove(kept)}
              >
                {words.remove}
              </Button>
            </div>
          </li>
        ))}
      </ul>
      {isFull ? <p className="help">{words.most}</p> : null}
    </>
  );
}

export function nameOf({ picture }: KeptPicture): string {
  return picture.name ?? words.unnamed;
}

function OnSheets({ kept, chosen, onChange }: PicturesChosen & { readonly kept: KeptPicture }) {
  const isOn = chosen.includes(kept.id);
  return (
    <ToggleButton
      className="chip"
      aria-label={words.useOn(nameOf(kept))}
      isSelected={isOn}
      isDisabled={!isOn && chosen.length >= MOST_OWN_ON_SHEET}
      onChange={(on) =>
        onChange((now) => (on ? [...now, kept.id] : now.filter((id) => id !== kept.id)))
      }
    >
      {words.onSheet}
    </ToggleButton>
  );
}

/** A name is kept when the field is left. */
function Named({ kept, keep }: { readonly kept: KeptPicture; readonly keep: OwnPictures['keep'] }) {
  const { name: _before, ...plain } = kept.picture;
  const [name, setName] = useState(kept.picture.name ?? '');
  const [objection, setObjection] = useState('');
  const rename = async () => {
    const next = name.trim();
    if (next === (kept.picture.name ?? '')) return;
    setObjection(await keep(next === '' ? plain : { ...plain, name: next }));
  };
  return (
    <TextField
      label={words.nameOf}
      value={name}
      onChange={setName}
      onBlur={() => void rename()}
      most={LONGEST_PICTURE_NAME}
      objection={objection}
    />
  );
}
