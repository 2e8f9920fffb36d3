// Takes in a photo or a drawing: from a file or the camera, dropped, or pasted.
import { type DragEvent, useEffect, useEffectEvent, useRef, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { FileTrigger } from 'react-aria-components/FileTrigger';
import type { OwnPicture } from '../../figures/index.ts';
import { words as shell } from '../words.ts';
import { CropPicture } from './crop-picture.tsx';
import { openImage } from './open-image.ts';
import { words } from './words.ts';

export interface AddPictureProps {
  readonly kept: readonly string[];
  readonly onKeep: (picture: OwnPicture) => Promise<string>;
}

export function AddPicture({ kept, onKeep }: AddPictureProps) {
  const [image, setImage] = useState<ImageBitmap>();
  const [said, setSaid] = useState('');
  const latest = useRef(0);
  const take = async (file: Blob | undefined) => {
    if (file === undefined) return;
    const turn = ++latest.current;
    setSaid(words.opening);
    const opened = await openImage(file).catch(() => undefined);
    // Another one was chosen meanwhile.
    if (turn !== latest.current) return opened instanceof ImageBitmap && opened.close();
    if (opened === undefined) return setSaid(shell.fileUnreadable);
    if (typeof opened === 'string') return setSaid(words.fault(opened));
    setSaid('');
    setImage(opened);
  };
  const paste = useEffectEvent((event: ClipboardEvent) => {
    const [file] = event.clipboardData?.files ?? [];
    if (file !== undefined) void take(file);
  });
  useEffect(() => {
    const listen = (event: ClipboardEvent) => paste(event);
    document.addEventListener('paste', listen);
    return () => document.removeEventListener('paste', listen);
  }, []);
  return (
    <div className="add-picture">
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields */}
      <div
        className="drop-place"
        role="group"
        aria-label={words.dropHere}
        onDragOver={(event: DragEvent) => event.preventDefault()}
        onDrop={(event: DragEvent) => {
          event.preventDefault();
          void take(event.dataTransfer.files[0]);
        }}
      >
        <FileTrigger acceptedFileTypes={['image/*']} onSelect={(files) => void take(files?.[0])}>
          <Button className="plain">{words.add}</Button>
        </FileTrigger>
        <span className="help">{words.drop}</span>
      </div>
      <p className="picture-said" aria-live="polite">
        {said}
      </p>
      {image === undefined ? null : (
        <CropPicture
          key={keyOf(image)}
          image={image}
          kept={kept}
          onKeep={async (picture) => {
            const objection = await onKeep(picture);
            if (objection === '') setImage(undefined);
            return objection;
          }}
          onLeave={() => setImage(undefined)}
        />
      )}
    </div>
  );
}

const keys = new WeakMap<ImageBitmap, number>();
let images = 0;

/** Another image is another crop, whatever it looks like. */
function keyOf(image: ImageBitmap): number {
  const key = keys.get(image) ?? ++images;
  keys.set(image, key);
  return key;
}
