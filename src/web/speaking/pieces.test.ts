// Sentences with controls, in the order of whatever language.
import { expect, test } from 'vitest';
import { piecesOf } from './pieces.ts';

test('controls stand where the message has them, and words that are named like them stay words', () => {
  const pieces = piecesOf(({ what, how }) => `${how}, paper ${what}what`, ['what', 'how']);
  expect(pieces).toEqual([{ control: 'how' }, ', paper ', { control: 'what' }, 'what']);
});
