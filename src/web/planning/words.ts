// What Today, Week and Growth say of sheets and skills; fetched with them.
import type { Skill } from '../../activities/index.ts';
import type { StickerStock, Tool, Why } from '../../records/index.ts';
import type { PackMaterials } from '../../sheets/index.ts';
import type { Lacking } from '../../supplies/index.ts';
import type { SheetCard } from './cards.ts';

export const SKILL_NAMES: Readonly<Record<Skill, string>> = {
  'telling-apart': 'telling apart',
  rules: 'keeping a rule',
  patterns: 'patterns and order',
  turns: 'turned and mirrored',
  parts: 'hidden and in parts',
  memory: 'remembering',
};

export const SKILLS_ABOUT: Readonly<Record<Skill, string>> = {
  'telling-apart': 'seeing what is the same and what differs',
  rules: 'doing with each figure what a rule says',
  patterns: 'copying a pattern, going on with it, putting in order',
  turns: 'knowing a shape again when it is turned, and its mirror image',
  parts: 'finding what lies under lines, is missing, or shows its outline only',
  memory: 'keeping in mind what was seen',
};

type WhyFacts = Pick<SheetCard, 'skill' | 'restedDays'> & { readonly child: string };

const WHYS: Readonly<Record<Why, (facts: WhyFacts) => string>> = {
  'first-of-skill': ({ child, skill }) =>
    `The first for “${SKILL_NAMES[skill]}”, on the easy side, to see where ${child} stands.`,
  nearest: ({ child }) => `The nearest there is to what ${child} can do now.`,
  'tells-more': ({ child }) => `It shows most of what ${child} can do now.`,
  rested: ({ child, restedDays }) =>
    restedDays === undefined
      ? `New to ${child}, and about as hard as fits now.`
      : `Last given ${daysAgo(restedDays)}, and about as hard as fits now.`,
  fits: () => 'About as hard as fits now.',
  favourite: () => 'An old favourite that goes well, for confidence.',
  favoured: ({ skill }) => `You wished for more of “${SKILL_NAMES[skill]}”.`,
  'moved-on': () => 'Planned before, and not done yet.',
  asked: () => 'As you chose it.',
};

/** Why a sheet is in the plan, in one sentence. */
export function whySentence(
  { why, skill, restedDays }: Pick<SheetCard, 'why' | 'skill' | 'restedDays'>,
  child: string,
): string {
  return WHYS[why]({ child, skill, ...(restedDays === undefined ? {} : { restedDays }) });
}

function daysAgo(days: number): string {
  if (days <= 0) return 'today';
  return days === 1 ? 'yesterday' : `${days} days ago`;
}

/** What to lay out, as a list of things; where there is nothing, that the child points. */
export function layOutWords({
  stickers,
  crayons,
  pencil,
  scissors,
  glue,
}: PackMaterials): readonly string[] {
  const things = [
    ...stickers.map(stickerWords),
    ...(crayons.length === 0 ? [] : [crayonWords(crayons)]),
    ...(pencil ? ['a pencil'] : []),
    ...(scissors ? ['scissors with round ends, with you beside the child'] : []),
    ...(glue ? ['a glue stick'] : []),
  ];
  return things.length === 0 ? ['nothing: the child points'] : things;
}

/** What a house has not, as a list of things. */
export function lackingWords({ stickers, crayons, tools }: Lacking): readonly string[] {
  return [
    ...stickers.map(stickerWords),
    ...(crayons.length === 0 ? [] : [crayonWords(crayons)]),
    ...tools.map((tool) => TOOL_NAMES[tool]),
  ];
}

export const TOOL_NAMES: Readonly<Record<Tool, string>> = {
  pencil: 'a pencil',
  scissors: 'scissors with round ends',
  glue: 'a glue stick',
  counters: 'small counters',
  pockets: 'wipe-clean pockets',
};

function stickerWords({ colour, diameterMm, count }: StickerStock): string {
  return `${count} ${colour} ${count === 1 ? 'sticker' : 'stickers'}, ${diameterMm}\u00a0mm across`;
}

function crayonWords(crayons: readonly string[]): string {
  const last = crayons.at(-1) ?? '';
  if (crayons.length === 1) return `a ${last} crayon`;
  return `crayons: ${crayons.slice(0, -1).join(', ')} and ${last}`;
}
