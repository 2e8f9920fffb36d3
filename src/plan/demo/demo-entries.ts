// The invented group behind "Try with a demo group".
import type { Language } from '../../languages/index.ts';
import type { Day, Entry } from '../../records/index.ts';
import type { ReadFacts } from '../sheet-facts.ts';
import group from './demo.generated.json' with { type: 'json' };
import { demoWords } from './demo-words.ts';
import { entriesOf } from './entries.ts';
import type { DemoGroup } from './rows.ts';

/**
 * Thirteen weeks of four invented children in an invented setting: nobody's records, and made from nobody's. What they
 * did ends before `lastDay`; plans reach to the end of its week. All entries are marked `demo`, and the same day gives
 * the same entries. Those of another day have other ids: take them out of the store before these are put in.
 * Names and notes are in the language, whose catalogue must be there; `read` makes the sheets that this needs.
 */
export function demoEntries(lastDay: Day, language: Language, read: ReadFacts): readonly Entry[] {
  return entriesOf(group as DemoGroup, lastDay, demoWords(language, read));
}
