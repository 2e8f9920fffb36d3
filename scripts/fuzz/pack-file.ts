// Pack files: read, proven, and their sheets listed.
import { checkPackText, openPackText } from '../../src/sheets/index.ts';
import { plainText } from '../../src/words/index.ts';
import { somePacks, someSheets } from './bases.ts';
import { changedTexts } from './changed-json.ts';
import type { Kind } from './kind.ts';
import { acceptedOrTold } from './must-hold.ts';

export function packFileKind(): Kind<string> {
  return {
    name: 'pack-file',
    inputs: changedTexts(somePacks(someSheets())),
    meet: (text) => {
      acceptedOrTold(openPackText(text));
      const check = acceptedOrTold(checkPackText(text));
      for (const { at } of check?.faults ?? []) plainText(at);
    },
    show: (text) => text,
  };
}
