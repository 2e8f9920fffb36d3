// A picture that was opened: what to take of it, how it will print, what it is called, and keeping it.
import { useId, useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { LONGEST_PICTURE_NAME, type OwnPicture } from '../../figures/index.ts';
import { Chips } from '../children/chips.tsx';
import { TextField } from '../children/text-field.tsx';
import { useOneAtATime } from '../use-one-at-a-time.ts';
import { firstSquare } from './cropping.ts';
import { PictureView } from './picture-view.tsx';
import type { Crop } from './simplify.ts';
import { Stage } from './stage.tsx';
import { type ProposalState, useProposal } from './use-proposal.ts';
import { words } from './words.ts';

const COLOURS = { 2: '2', 3: '3', 4: '4', 5: '5', 6: '6' } as const;

export interface CropPictureProps {
  readonly image: ImageBitmap;
  /** Numbers of the pictures that are kept. */
  readonly kept: readonly string[];
  /** Answers why it could not be kept, in words; empty where it was. */
  readonly onKeep: (picture: OwnPicture) => Promise<string>;
  readonly onLeave: () => void;
}

export function CropPicture({ image, kept, onKeep, onLeave }: CropPictureProps) {
  const title = useId();
  const [square, setSquare] = useState(() => firstSquare(image));
  const [crop, setCrop] = useState<Crop>('circle');
  const [colours, setColours] = useState<keyof typeof COLOURS>(5);
  const [ground, setGround] = useState<'away' | 'stay'>('away');
  const [name, setName] = useState('');
  const [objection, setObjection] = useState('');
  const proposal = useProposal(image, square, { crop, colours, cutOut: ground === 'away' });
  const picture = typeof proposal === 'object' ? proposal.picture : undefined;
  const isKept = typeof proposal === 'object' && kept.includes(proposal.id);
  const keep = useOneAtATime(async () => {
    if (picture === undefined) return;
    const named = name.trim();
    setObjection(await onKeep(named === '' ? picture : { ...picture, name: named }));
  });
  return (
    <section className="crop-picture" aria-labelledby={title}>
      <h3 id={title} className="field-label">
        {words.crop}
      </h3>
      <div className="crop-both">
        <Stage image={image} square={square} crop={crop} onChange={setSquare} />
        <figure className="crop-printed">
          {picture === undefined ? (
            <div className="own-picture" />
          ) : (
            <PictureView picture={picture} label={words.printedAlt} />
          )}
          <figcaption>{words.printed}</figcaption>
        </figure>
      </div>
      <Chips
        label={words.shape}
        names={words.shapes}
        chosen={[crop]}
        onChange={([next]) => next && setCrop(next)}
        isNeeded
      />
      <Chips
        label={words.colours}
        names={COLOURS}
        chosen={[`${colours}` as const]}
        onChange={([next]) => next && setColours(Number(next) as keyof typeof COLOURS)}
        isNeeded
      />
      <Chips
        label={words.ground}
        help={words.groundHelp}
        names={words.grounds}
        chosen={[ground]}
        onChange={([next]) => next && setGround(next)}
        isNeeded
      />
      <p className="picture-said" aria-live="polite">
        {isKept ? words.already : saidOf(proposal)}
      </p>
      <TextField
        label={words.nameOf}
        value={name}
        onChange={setName}
        help={words.nameHelp}
        most={LONGEST_PICTURE_NAME}
        objection={objection}
      />
      <div className="row">
        <Button
          className="next"
          isDisabled={picture === undefined || isKept}
          onPress={() => void keep()}
        >
          {words.keep}
        </Button>
        <Button className="plain" onPress={onLeave}>
          {words.another}
        </Button>
      </div>
    </section>
  );
}

function saidOf(proposal: ProposalState): string {
  if (proposal === undefined) return '';
  if (typeof proposal === 'string') return words.fault(proposal);
  return [
    ...(proposal.groundStays ? [words.groundStays] : []),
    ...(proposal.alike.length > 0 ? [words.alike(proposal.alike)] : []),
  ].join(' ');
}
