// The invented group behind "Try with a demo group".
import type { Day, Entry } from '../../records/index.ts';
import group from './demo.generated.json' with { type: 'json' };
import { entriesOf } from './entries.ts';
import type { DemoGroup } from './rows.ts';

/**
 * Thirteen weeks of four invented children in an invented setting: nobody's records, and made from nobody's. What they
 * did ends before `lastDay`; plans reach to the end of its week. All entries are marked `demo`, and the same day gives
 * the same entries. Those of another day have other ids: take them out of the store before these are put in.
 */
export function demoEntries(lastDay: Day): readonly Entry[] {
  return entriesOf(group as DemoGroup, lastDay);
}
