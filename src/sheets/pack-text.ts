// The text of a pack file, read as one.
import { accept, type Result, refuse } from '../base/index.ts';
import { readJson } from './json-text.ts';
import { PACK_CHARACTERS } from './pack-file.ts';
import { PACK_FORMAT, type PackFile, packSchema } from './pack-schema.ts';
import { refusalsOf } from './schema-refusals.ts';
import { versionRefusal } from './version-refusal.ts';

/** Refuses text that is no pack file, naming the path of each fault. */
export function readPackText(text: string): Result<PackFile> {
  const json = readJson(text, 'pack', { characters: PACK_CHARACTERS });
  if (!json.ok) return json;
  const version = versionRefusal(json.value, PACK_FORMAT, 'pack');
  if (version) return refuse(version);
  const read = packSchema.safeParse(json.value);
  return read.success ? accept(read.data) : refuse(...refusalsOf(read.error, json.value, 'pack'));
}
