// What a pack needs, what the house has of it, and what would do, as sentences.
import { WORDINGS } from '../activities/index.ts';
import type { Refusal, Thing } from '../base/index.ts';
import { colourName } from '../figures/index.ts';
import type { Language } from '../languages/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { inCommas, SAYS } from './say-refusal.ts';

type NotInTheHouse = Extract<Refusal, { readonly code: 'not-in-the-house' }>;

export function houseSentences(
  { at, sheets, of, possible, needs, has, add }: NotInTheHouse,
  language: Language,
): readonly string[] {
  const say = SAYS[language];
  const told = {
    ...{ at, sheets, needs: thingsText(needs, language) },
    has: has.length === 0 ? say('house.none') : thingsText(has, language),
  };
  const more = { possible, add: thingsText(add, language) };
  const what = possible === 0 ? 'house.add' : 'house.fewer';
  return of === undefined
    ? [say('house.needs', told), say(what, more)]
    : [say('house.needs.first', { ...told, of }), say(`${what}.least`, more)];
}

/** Such as `54 stickers of 13 mm (36 red, 18 blue), crayons in red and blue, and a pencil`. */
function thingsText(things: readonly Thing[], language: Language): string {
  const say = SAYS[language];
  const stickers = things.filter(({ what }) => what === 'sticker');
  const sizes = [...new Set(stickers.map(({ diameterMm = 0 }) => diameterMm))].sort(
    (one, other) => one - other,
  );
  const crayons = things.flatMap(({ what, colour }) =>
    what === 'crayon' && colour !== undefined ? [colour] : [],
  );
  return WORDINGS[language].list([
    ...sizes.map((size) => stickersText(stickers, size, language)),
    ...(crayons.length === 0 ? [] : [crayonsText(crayons, language)]),
    ...things.flatMap(({ what, paper = '' }) =>
      what === 'sticker' || what === 'crayon' ? [] : say(`thing.${what}`, { paper }),
    ),
  ]);
}

function stickersText(stickers: readonly Thing[], sizeMm: number, language: Language): string {
  const say = SAYS[language];
  const ofSize = stickers.filter(({ diameterMm }) => diameterMm === sizeMm);
  const sum = ofSize.reduce((total, { count = 0 }) => total + count, 0);
  const each = ofSize.map(({ colour = '', count = 0 }) =>
    say('thing.sticker', { count, colour: colourText(colour, language) }),
  );
  return say('thing.stickers', { count: sum, sizeMm, each: inCommas(say, each) });
}

function crayonsText(colours: readonly string[], language: Language): string {
  const names = colours.map((colour) => colourText(colour, language));
  return SAYS[language]('thing.crayons', {
    count: colours.length,
    colours: WORDINGS[language].list(names),
  });
}

/** The name of a colour of the palette; any other as it is. */
function colourText(colour: string, language: Language): string {
  const known = COLOUR_NAMES.find((name) => name === colour);
  return known ? colourName(known, language) : colour;
}
