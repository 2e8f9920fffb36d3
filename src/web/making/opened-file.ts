// A file that somebody chose as a pack file, as the screen shows it.
import { words } from '../words.ts';
import { isOtherFile } from './other-file.ts';
import type { FiledPackShown, Reply } from './protocol.ts';
import { replyOf } from './reply.ts';
import { filedPack } from './sheet-of-code.ts';

/** What a pack file holds; of any other file, that it is none, told of its format. */
export function openedFile(text: string): Reply<FiledPackShown> {
  const filed = filedPack(text);
  return !filed.ok && isOtherFile(filed.refusals, 'pack')
    ? { ok: false, objections: [{ control: 'format', sentence: words.noPackFile }] }
    : replyOf(filed, '');
}
