// Draws pictures that all differ, all of one kind but one, so that nothing else singles out any of them.
import type { Random } from '../../base/index.ts';
import { PICTURES } from '../../figures/index.ts';
import type { Member } from './generate-order.ts';
import type { Parameters } from './task.ts';

interface Picture {
  readonly name: string;
  readonly colour: string;
  /** Of life or of use, where a kind has several; else empty. */
  readonly way: string;
  /** Both together. */
  readonly look: string;
}

/** Names of pictures by the colour that most of each shows, and way. */
type Pictures = Readonly<Record<string, string>>;

/**
 * Pictures by what a child may sort those of one kind by: main colour, and whether they swim, or are fruit or sweet. Left
 * out: those whose main colour is in doubt, and those of a way of life that no other of their colour has. By eye.
 */
const KINDS = {
  animals: {
    orange: 'cat dog giraffe',
    grey: 'elephant mouse rabbit',
    pink: 'pig',
    brown: 'hedgehog',
    'blue swims': 'fish whale',
  },
  food: {
    'red fruit': 'apple strawberry cherries',
    'yellow fruit': 'banana',
    'green fruit': 'pear',
    'purple fruit': 'grapes',
    'orange sweet': 'ice-cream cake',
  },
  things: { red: 'teapot scissors clock', orange: 'key bell pencil', purple: 'umbrella bed' },
  vehicles: { red: 'car fire-engine', green: 'tractor' },
  plants: { green: 'palm-tree tree fir-tree clover' },
} as const satisfies Readonly<Record<string, Pictures>>;

type Kind = keyof typeof KINDS;

/** Pictures that are odd among another kind, and never among the others of their own. */
const STRAY_ANIMALS: Pictures = { green: 'turtle snake', red: 'crab' };
const STRAY_FOOD: Pictures = { 'orange root': 'carrot' };

/** What is plainly of another kind: no plant among food, which grows too, and no thing among vehicles. */
const STRAYS: Readonly<Record<Kind, readonly Pictures[]>> = {
  animals: [KINDS.food, STRAY_FOOD, KINDS.vehicles, KINDS.plants, KINDS.things],
  food: [KINDS.animals, STRAY_ANIMALS, KINDS.vehicles, KINDS.things],
  things: [KINDS.animals, STRAY_ANIMALS, KINDS.food, STRAY_FOOD, KINDS.plants],
  vehicles: [KINDS.animals, STRAY_ANIMALS, KINDS.food, STRAY_FOOD, KINDS.plants],
  plants: [KINDS.animals, STRAY_ANIMALS, KINDS.vehicles, KINDS.things],
};

/** The most pictures, the odd one included, that the tables have for every likeness. */
export const MOST_KIND_PICTURES = 7;

/**
 * The pictures of one kind and one of another. Near: the odd one has a colour that others have too. Far: it has
 * its own. No other has a colour of its own, unless all do.
 */
export function drawKinds(
  { figures, likeness }: Pick<Parameters, 'figures' | 'likeness'>,
  random: Random,
): { readonly others: readonly Member[]; readonly odd: Member } {
  const kinds = Object.keys(KINDS) as readonly Kind[];
  for (const kind of random.shuffle(kinds)) {
    const groups = subsetsOf(picturesIn([KINDS[kind]]), figures - 1);
    for (const others of random.shuffle(groups)) {
      const strays = picturesIn(STRAYS[kind]).filter((odd) => isGood(others, odd, likeness));
      if (strays.length === 0) continue;
      return { others: others.map(memberOf), odd: memberOf(random.pick(strays)) };
    }
  }
  throw new Error(`odd-one-out › figures: no ${likeness} kinds of ${figures} pictures`);
}

function isGood(
  others: readonly Picture[],
  odd: Picture,
  likeness: Parameters['likeness'],
): boolean {
  const isPaired = others.every(
    ({ look }) => others.filter((other) => other.look === look).length > 1,
  );
  const isShared = others.some(({ colour }) => colour === odd.colour);
  if (likeness === 'near') return isShared && isPaired;
  const isAllDifferent =
    distinct(others, 'colour') === others.length && distinct(others, 'way') === 1;
  return !isShared && (isPaired || isAllDifferent);
}

function distinct(pictures: readonly Picture[], trait: 'colour' | 'way'): number {
  return new Set(pictures.map((picture) => picture[trait])).size;
}

function picturesIn(tables: readonly Pictures[]): readonly Picture[] {
  return tables.flatMap((table) =>
    Object.entries(table).flatMap(([look, names]) => {
      const [colour = look, way = ''] = look.split(' ');
      return names.split(' ').map((name): Picture => ({ name, colour, way, look }));
    }),
  );
}

function memberOf({ name, colour, way, look }: Picture): Member {
  const form = PICTURES.find((picture) => picture === `picture-${name}`);
  if (form) return { figure: { form }, idle: [colour, way, look] };
  throw new Error(`odd-one-out › pictures: no ${name}`);
}

function subsetsOf<T>(items: readonly T[], count: number): readonly (readonly T[])[] {
  if (count === 0) return [[]];
  return items.flatMap((item, index) =>
    subsetsOf(items.slice(index + 1), count - 1).map((rest) => [item, ...rest]),
  );
}
