// What a pack needs, what the house has of it, and what would do, as sentences.
import type { Refusal, Thing } from '../base/index.ts';

type NotInTheHouse = Extract<Refusal, { readonly code: 'not-in-the-house' }>;

export function houseFact({ sheets, of, possible, needs, has, add }: NotInTheHouse): string {
  const subject = subjectOf(sheets, of);
  const there = has.length === 0 ? 'none of that' : thingsText(has);
  const fewer =
    possible === 0 ? '' : `Ask for ${possible === 1 ? '1 sheet' : `${possible} sheets`}, or add`;
  return `${subject} ${thingsText(needs)}; the house has ${there}. ${fewer || 'Add'} ${of === undefined ? '' : 'at least '}${thingsText(add)}.`;
}

function subjectOf(sheets: number, of: number | undefined): string {
  if (of !== undefined) return `the first ${sheets} of ${of} sheets alone need`;
  return sheets === 1 ? '1 sheet needs' : `${sheets} sheets need`;
}

/** Such as `54 stickers of 13 mm (36 red, 18 blue), crayons in red and blue, and a pencil`. */
export function thingsText(things: readonly Thing[]): string {
  const stickers = things.filter(({ what }) => what === 'sticker');
  const sizes = [...new Set(stickers.map(({ diameterMm = 0 }) => diameterMm))].sort(
    (one, other) => one - other,
  );
  const crayons = things.flatMap(({ what, colour }) =>
    what === 'crayon' && colour !== undefined ? [colour] : [],
  );
  return inSeries([
    ...sizes.map((size) => stickersText(stickers, size)),
    ...(crayons.length === 0 ? [] : [crayonsText(crayons)]),
    ...things.flatMap(({ what }) => (what === 'sticker' || what === 'crayon' ? [] : TOOLS[what])),
  ]);
}

const TOOLS: Readonly<Record<Exclude<Thing['what'], 'sticker' | 'crayon'>, string>> = {
  pencil: 'a pencil',
  scissors: 'scissors with round ends',
  glue: 'a glue stick',
  counters: 'small counters',
  pockets: 'wipe-clean pockets',
};

function stickersText(stickers: readonly Thing[], sizeMm: number): string {
  const ofSize = stickers.filter(({ diameterMm }) => diameterMm === sizeMm);
  const sum = ofSize.reduce((total, { count = 0 }) => total + count, 0);
  const each = ofSize.map(({ colour = '', count = 0 }) => `${count} ${colour}`).join(', ');
  return `${sum} ${sum === 1 ? 'sticker' : 'stickers'} of ${sizeMm} mm (${each})`;
}

function crayonsText(colours: readonly string[]): string {
  return colours.length === 1 ? `a ${colours[0]} crayon` : `crayons in ${inSeries(colours)}`;
}

function inSeries(texts: readonly string[]): string {
  const last = texts.at(-1) ?? '';
  return texts.length < 2 ? last : `${texts.slice(0, -1).join(', ')} and ${last}`;
}
