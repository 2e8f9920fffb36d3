// What becomes of the square that is taken, reckoned by a worker: the last one stays while the next is on its way.
import { useEffect, useRef, useState } from 'react';
import { startAsking } from '../asking/start-asking.ts';
import type { Square } from './cropping.ts';
import type { PictureTalk, Proposal } from './protocol.ts';
import { SIDE, type SimplifyWishes } from './simplify.ts';
import { drawSquare } from './stage.tsx';
import type { Fault } from './words.ts';

const asker = startAsking<PictureTalk>(
  () => new Worker(new URL('./picture.worker.ts', import.meta.url), { type: 'module' }),
  () => ({ ok: false, fault: 'no-worker' }),
);

export type ProposalState = Proposal | Fault | undefined;

export function useProposal(
  image: ImageBitmap,
  square: Square,
  wishes: SimplifyWishes,
): ProposalState {
  const [proposal, setProposal] = useState<ProposalState>();
  const before = useRef<Promise<void>>(Promise.resolve());
  const { crop, colours, cutOut } = wishes;
  useEffect(() => {
    let isWanted = true;
    // One at a time: what was moved again meanwhile is never reckoned.
    before.current = before.current.then(async () => {
      if (!isWanted) return;
      const pixels = pixelsOf(image, square);
      if (pixels === undefined) return setProposal('no-worker');
      const ask = { pixels, wishes: { crop, colours, cutOut } };
      const reply = await asker.ask('simplify', ask);
      if (isWanted) setProposal(reply.ok ? reply.value : reply.fault);
    });
    return () => {
      isWanted = false;
    };
  }, [image, square, crop, colours, cutOut]);
  return proposal;
}

function pixelsOf(image: ImageBitmap, square: Square): Uint8ClampedArray | undefined {
  const canvas = document.createElement('canvas');
  canvas.width = SIDE;
  canvas.height = SIDE;
  drawSquare(canvas, image, square);
  return canvas.getContext('2d')?.getImageData(0, 0, SIDE, SIDE).data;
}
