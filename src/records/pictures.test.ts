// Kept pictures: the latest name counts, and nothing is left of what is removed.
import { expect, it } from 'vitest';
import { ownPictureId } from '../figures/index.ts';
import type { PictureEntry } from './entry.ts';
import { readEntry } from './entry-schema.ts';
import { idsOfPicture, keptPictures } from './pictures.ts';

const SQUARE = 'M-400 -400L400 -400L400 400L-400 400Z';
const entry = (number: number, name?: string): PictureEntry => ({
  id: `0190000${number}-0000-7000-8000-000000000000`,
  at: number,
  kind: 'picture',
  ...(name === undefined ? {} : { name }),
  outline: SQUARE,
  parts: [['#c81e28', SQUARE]],
});

it('a kept picture has the name that it was given last, and one number', () => {
  const [first, second] = [entry(1, 'box'), entry(2, 'crate')];
  expect(keptPictures([second, first])).toMatchObject([
    { id: ownPictureId(first), picture: { name: 'crate' } },
  ]);
  expect(keptPictures([first, entry(3)])[0]?.picture.name).toBeUndefined();
});

it('all entries of a picture go with it', () => {
  const all = [entry(1, 'box'), entry(2, 'crate')];
  expect(idsOfPicture(all, ownPictureId(entry(1)))).toEqual(all.map(({ id }) => id));
});

it('an entry of a picture is read back as it was written', () => {
  expect(readEntry(entry(1, 'box'), 'test')).toEqual({ ok: true, value: entry(1, 'box') });
});
