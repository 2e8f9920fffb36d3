// What is said of what sheets take of the house.
import type { Use } from '../../supplies/index.ts';

const TOOLS = {
  pencil: 'a pencil',
  scissors: 'scissors',
  glue: 'a glue stick',
  counters: 'small counters',
  pockets: 'wipe-clean pockets',
} as const;

export const words = {
  title: 'From what is in the house',
  ofCount: 'How many, of how many there are in the house.',
  nothing: 'It takes nothing: the child points.',
  tooMany: (most: number) => `With more than ${most} sheets this is not counted here.`,
  thing: ({ what, colour = '', diameterMm = 0 }: Use): string => {
    if (what === 'sticker') return `${colour} stickers, ${diameterMm}\u00a0mm:`;
    return what === 'crayon' ? `a crayon in ${colour}:` : `${TOOLS[what]}:`;
  },
  count: ({ what, uses, has }: Use): string => {
    if (what === 'sticker') return `${uses} of ${has}`;
    return has > 0 ? 'there' : '';
  },
  missing: ({ what, uses, has }: Use): string =>
    what === 'sticker' ? `, ${uses - has} missing` : 'missing',
} as const;
