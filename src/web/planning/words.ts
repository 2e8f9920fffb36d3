// What several screens say of sheets, skills and the things that they take; fetched with the first of them.
import type { Skill } from '../../activities/index.ts';
import type { StickerStock, Tool } from '../../records/index.ts';
import type { PackMaterials } from '../../sheets/index.ts';
import type { Lacking } from '../../supplies/index.ts';
import { shared } from '../speaking/shared.ts';
import { spoken } from '../speaking/spoken.ts';
import type { SheetCard } from './cards.ts';
import { MESSAGES } from './messages-en.ts';

type WhyFacts = Pick<SheetCard, 'why' | 'skill' | 'restedDays'>;

export const words = spoken('app/planning', MESSAGES, ({ say, plain, under }) => {
  const skills: Readonly<Record<Skill, string>> = under('skill');
  const tools: Readonly<Record<Tool, string>> = under('tool');
  const sticker = ({ colour, diameterMm, count }: StickerStock) =>
    say('sticker', { colour: shared.colour(colour), key: colour, diameterMm, count });
  const crayons = (colours: readonly string[]) => {
    const [first, ...others] = colours;
    if (first === undefined) return [];
    return others.length === 0
      ? [say('crayon', { colour: shared.colour(first), key: first })]
      : [say('crayons', { colours: shared.listed(colours.map(shared.colour)) })];
  };
  return {
    skills,
    skillsAbout: under('skillAbout') satisfies Readonly<Record<Skill, string>>,
    tools,
    /** Why a sheet is in the plan, in one sentence. */
    whySentence: ({ why, skill, restedDays }: WhyFacts, child: string) => {
      const isNew = why === 'rested' && restedDays === undefined;
      const days = Math.max(0, restedDays ?? 0);
      const facts = { child, skill: skills[skill], skillKey: skill, days };
      return say(isNew ? 'why.rested.never' : `why.${why}`, facts);
    },
    /** What to lay out, as a list of things; where there is nothing, that the child points. */
    layOut: (materials: PackMaterials): readonly string[] => {
      const things = [
        ...materials.stickers.map(sticker),
        ...crayons(materials.crayons),
        ...materials.tools.map((tool) =>
          tool === 'scissors' ? plain.scissorsBeside : tools[tool],
        ),
      ];
      return things.length === 0 ? [plain.nothing] : things;
    },
    /** What a house has not, as a list of things. */
    lacking: (lacking: Lacking): readonly string[] => [
      ...lacking.stickers.map(sticker),
      ...crayons(lacking.crayons),
      ...lacking.tools.map((tool) => tools[tool]),
      ...lacking.papers.map((paper) => say('paper', { paper })),
    ],
  };
});
