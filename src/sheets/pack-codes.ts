// The sheets of a pack file by their codes, to be made again; nothing is proven here.
import type { ActivityId } from '../activities/index.ts';
import { accept, type Result, refuse } from '../base/index.ts';
import type { OwnPicture } from '../figures/index.ts';
import { knowPictures } from './own-pictures.ts';
import { readPackText } from './pack-text.ts';

/** One sheet as a pack file names it. */
export interface FiledSheet {
  readonly code: string;
  readonly activity: ActivityId;
  readonly step: number;
  readonly isChanged: boolean;
  /** Whose it is, in the pack of a group. */
  readonly child?: string;
}

export interface FiledPack {
  readonly sheets: readonly FiledSheet[];
  /** The own pictures that came with it, known from here on. */
  readonly pictures: readonly OwnPicture[];
}

/** Refuses text that is no pack file, or holds pictures that are none, naming the path of each fault. */
export function openPackText(text: string): Result<FiledPack> {
  const read = readPackText(text);
  if (!read.ok) return read;
  const { sheets, pictures = [] } = read.value;
  const unknown = knowPictures(pictures, 'pack');
  if (unknown.length > 0) return refuse(...unknown);
  return accept({
    sheets: sheets.map(({ code, activity, step, edited, child }) => ({
      ...{ code, activity, step, isChanged: edited === true },
      ...(child === undefined ? {} : { child: child.name }),
    })),
    pictures,
  });
}
