// Reads the nicknames from the records; fetched once Make wants them.
import { viewOf } from '../../records/index.ts';
import { shelfIn } from '../children/remembered.ts';
import { store } from '../children/use-records.ts';

/** Of the shelf in view, each once, in the order in which the children were added; none where they cannot be read. */
export async function nicknamesNow(): Promise<readonly string[]> {
  const read = await store.read();
  if (!read.ok) return [];
  const { children } = viewOf(read.value, shelfIn(read.value));
  return [...new Set(children.map(({ nickname }) => nickname))];
}
