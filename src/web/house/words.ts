// What is said of what sheets take of the house.
import type { Use } from '../../supplies/index.ts';
import { shared } from '../speaking/shared.ts';
import { spoken } from '../speaking/spoken.ts';
import { MESSAGES } from './messages-en.ts';

export const words = spoken('app/house', MESSAGES, ({ say, plain }) => ({
  ...plain,
  tooMany: (most: number) => say('tooMany', { most }),
  thing: ({ what, colour = '', diameterMm = 0, paper = '' }: Use) =>
    say(`thing.${what}`, {
      colour: shared.colour(colour),
      key: colour,
      ...{ diameterMm, paper },
    }),
  count: ({ what, uses, has }: Use) => {
    if (what === 'sticker') return say('count.sticker', { uses, has });
    return has > 0 ? say('count.there') : '';
  },
  missing: ({ what, uses, has }: Use) =>
    what === 'sticker' ? say('missing.sticker', { missing: uses - has }) : say('missing.other'),
}));
