// The sheets of a pack file by their codes, to be made again; nothing is proven here.
import type { ActivityId } from '../activities/index.ts';
import { accept, type Result, refuse } from '../base/index.ts';
import { readJson } from './json-text.ts';
import { PACK_CHARACTERS } from './pack-file.ts';
import { packSchema } from './pack-schema.ts';
import { refusalsOf } from './schema-refusals.ts';
import { versionRefusal } from './version-refusal.ts';

/** One sheet as a pack file names it. */
export interface FiledSheet {
  readonly code: string;
  readonly activity: ActivityId;
  readonly step: number;
  readonly isChanged: boolean;
}

/** Refuses text that is no pack file, naming the path of each fault. */
export function sheetsInPackText(text: string): Result<readonly FiledSheet[]> {
  const json = readJson(text, 'pack', { characters: PACK_CHARACTERS });
  if (!json.ok) return json;
  const version = versionRefusal(json.value, 'pack');
  if (version) return refuse(version);
  const read = packSchema.safeParse(json.value);
  if (!read.success) return refuse(...refusalsOf(read.error, json.value, 'pack'));
  return accept(
    read.data.sheets.map(({ code, activity, step, edited }) => ({
      code,
      activity,
      step,
      isChanged: edited === true,
    })),
  );
}
