// Short texts that a person types or that a browser kept: names of a group, a measure, wishes.
import fc from 'fast-check';
import { readMeasure } from '../../src/page/index.ts';
import { childFileName, readChildren } from '../../src/sheets/index.ts';
import { wishesIn } from '../../src/web/planning/wishes.ts';
import { changedTexts } from './changed-json.ts';
import { hostileText } from './hostile.ts';
import type { Kind } from './kind.ts';
import { acceptedOrTold, isOneFileName } from './must-hold.ts';

const KEPT = [{ minutes: 10, paper: 'A4', print: 'colour', things: ['sticker', 'glue'] }];

export function smallTextKind(): Kind<string> {
  const names = fc
    .array(fc.oneof(hostileText, fc.constantFrom('Wren', 'Moss +1', 'Ivy -99', '+1', 'a - 2')), {
      maxLength: 8,
    })
    .map((all) => all.join(','));
  const measure = fc.oneof(
    fc.constantFrom('50', '49,5', '1e3', '-50', '50 mm', '٥٠', 'Infinity', '0x32', '.5', '5.'),
    fc.double().map(String),
  );
  return {
    name: 'small-text',
    inputs: fc.oneof(names, measure, hostileText, changedTexts(KEPT)),
    meet: (text) => {
      const children = acceptedOrTold(readChildren(text, 'group')) ?? [];
      for (const [index, { name }] of children.entries()) {
        isOneFileName(`${childFileName({ number: index + 1, name }, children.length)}.pdf`);
      }
      acceptedOrTold(readMeasure(text, 'measured'));
      wishesIn(text);
    },
    show: (text) => text,
  };
}
