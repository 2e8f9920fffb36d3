// The sheets of a pack file by their codes, to be made again; nothing is proven here.
import type { ActivityId } from '../activities/index.ts';
import { accept, type Result } from '../base/index.ts';
import { readPackText } from './pack-text.ts';

/** One sheet as a pack file names it. */
export interface FiledSheet {
  readonly code: string;
  readonly activity: ActivityId;
  readonly step: number;
  readonly isChanged: boolean;
}

/** Refuses text that is no pack file, naming the path of each fault. */
export function sheetsInPackText(text: string): Result<readonly FiledSheet[]> {
  const read = readPackText(text);
  if (!read.ok) return read;
  return accept(
    read.value.sheets.map(({ code, activity, step, edited }) => ({
      code,
      activity,
      step,
      isChanged: edited === true,
    })),
  );
}
