// What suits a child: its age, hand, eyes and languages, and the things that are in the house.
import { type Activity, activityOf, handLevel, type Material } from '../activities/index.ts';
import { mergingPairs, type Sight } from '../palette/index.ts';
import type { Child, ColourVision, Day, Stock } from '../records/index.ts';
import { printedColours, type Sheet } from '../sheets/index.ts';
import { ageBandOn } from './days.ts';
import type { Rung } from './rung-book.ts';

/** Kinds that are wished for or not: no step of a ladder asks for counters, who wants them chooses them. */
export type MaterialKind = Exclude<Material['kind'], 'counters'>;

export interface Bounds {
  /** In whole years; absent where the month of birth is not known. */
  readonly age?: number;
  /** The hardest movement that the hand does well, 0 to 7. */
  readonly hand: number;
  readonly cuts: boolean;
  /** Sights to which the colours of a sheet must differ. */
  readonly sights: readonly Sight[];
  /** Language tags; none known: none. */
  readonly languages: readonly string[];
  /** Kinds of things that are in the house; absent: all. */
  readonly supplies?: ReadonlySet<Material['kind']>;
}

/**
 * The hand by age, where the adult has not said what it does well: circle at three, cross at four, square and triangle
 * at five (the copying ages of the Gesell tradition; sources differ by a year or more). Age unknown: as at three.
 */
const HAND_BY_AGE: Readonly<Record<number, number>> = { 3: 3, 4: 4, 5: 6 };
const SURE_HAND = 7;

/**
 * The largest smaller-over-larger of quantities that is fair: for 80 to 85 % right, quantities want about 1 to 2 at three,
 * 1 to 1.7 at four, 1 to 1.35 at five. Reckoned from Halberda & Feigenson 2008, Dev. Psychol. 44, 1457–1465, whose
 * 3:4, 4:5 and 5:6 are the finest that a group of that age tells apart. Age unknown: as at four.
 */
const QUANTITIES_BY_AGE: Readonly<Record<number, number>> = { 3: 1 / 2, 4: 1 / 1.7, 5: 1 / 1.35 };

/** A step whose age hint is so many years above the child's is left for later: common practice, no source. */
const YEARS_AHEAD = 1;

/** The scripts that are not everybody's, by the languages that are written in them. */
const SCRIPTS: readonly (readonly [start: string, languages: readonly string[]])[] = [
  ['cyrillic', ['ru', 'uk', 'bg', 'sr', 'mk', 'be', 'kk', 'ky', 'mn', 'tg']],
  ['greek', ['el']],
  ['devanagari', ['hi', 'mr', 'ne', 'sa', 'kok', 'mai', 'bho']],
  ['arabic', ['ar', 'fa', 'ur', 'ps', 'ckb', 'sd', 'ug']],
  ['spanish', ['es']],
];

/** The kinds of things that a count has any of. */
export function kindsIn({ stickers, crayons, tools }: Stock): ReadonlySet<Material['kind']> {
  return new Set<Material['kind']>([
    ...(stickers.some(({ count }) => count > 0) ? (['sticker'] as const) : []),
    ...(crayons.length > 0 ? (['crayon'] as const) : []),
    ...tools.filter((tool) => tool !== 'pockets'),
  ]);
}

export function boundsOf(
  child: Omit<Child, 'id' | 'nickname'>,
  day: Day,
  supplies?: ReadonlySet<Material['kind']>,
): Bounds {
  const { birthMonth, deeds = [], colourVision = 'normal', languages = [] } = child;
  const age = birthMonth === undefined ? undefined : ageBandOn(day, birthMonth);
  const hand = HAND_BY_AGE[age ?? 3] ?? SURE_HAND;
  return {
    ...(age === undefined ? {} : { age }),
    hand: deeds.length > 0 ? Math.max(...deeds.map(handLevel)) : hand,
    cuts: deeds.length > 0 ? deeds.includes('cut') : hand >= handLevel('cut'),
    sights: sightsOf(colourVision),
    languages,
    ...(supplies === undefined ? {} : { supplies }),
  };
}

function sightsOf(vision: ColourVision): readonly Sight[] {
  return vision === 'red-green' ? ['protan', 'deutan'] : [vision];
}

/** Latin letters, which are everybody's but those who are known to write otherwise. */
const LATIN_LETTERS: readonly string[] = ['capitals', 'small-letters'];

/**
 * The contents of an activity that are for everybody or in a script of the child's languages; without the Latin letters
 * where each of its languages has letters of its own among the contents.
 */
export function contentsFor({ parameters }: Activity, { languages }: Bounds): readonly string[] {
  const content = parameters.content;
  const all = content?.kind === 'choice' ? content.values : [];
  const spoken = languages.map((tag) => tag.split('-')[0] ?? tag);
  const scriptOf = (name: string) => SCRIPTS.find(([start]) => name.startsWith(`${start}-`))?.[1];
  const own = all.flatMap((name) => scriptOf(name) ?? []);
  const isElsewhere = spoken.length > 0 && spoken.every((language) => own.includes(language));
  return all.filter((name) => {
    if (isElsewhere && LATIN_LETTERS.includes(name)) return false;
    return scriptOf(name)?.some((language) => spoken.includes(language)) ?? true;
  });
}

/** Whether tasks of a rung are fair for the child, within its hand, and can be done with what is there. */
export function suits(rung: Rung, { age, hand, cuts, supplies }: Bounds): boolean {
  const isForAge = age === undefined || rung.age <= age + YEARS_AHEAD;
  const isFair = rung.quantities <= (QUANTITIES_BY_AGE[age ?? 4] ?? 1);
  const isInHand = rung.hand <= hand && (cuts || !rung.materials.has('scissors'));
  const isThere = [...rung.materials].every((kind) => supplies?.has(kind) ?? true);
  return isForAge && isFair && isInHand && isThere;
}

/** Whether all colours of each task differ to the child's eyes. In grey print marks tell them apart. */
export function isSeen({ spec, tasks }: Sheet, { sights }: Bounds): boolean {
  if (spec.print === 'grey') return true;
  const merging = tasks.flatMap((task) => mergingPairs(printedColours(task)));
  return !merging.some(({ sight }) => sights.includes(sight));
}

/** Responses of an activity, those of the ladder itself (`undefined`) first. */
export function responsesOf(id: Parameters<typeof activityOf>[0]): readonly (string | undefined)[] {
  const response = activityOf(id).parameters.response;
  return [undefined, ...(response?.kind === 'choice' ? response.values : [])];
}
