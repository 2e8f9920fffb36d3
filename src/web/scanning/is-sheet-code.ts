// Whether a text that was scanned is the code of a sheet: the maker knows.
import type { Maker } from '../making/maker.ts';

export async function isSheetCode(maker: Maker, text: string): Promise<boolean> {
  return (await maker.ask('open', { code: text })).ok;
}
