// The ways in which a sheet can be asked for so that it takes no more than the house has: by response, size and colours.
import { type Activity, activityOf, type Parameter, type Values } from '../activities/index.ts';
import { settle } from '../learner/index.ts';
import type { PrintStyle } from '../page/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';
import {
  changesOf,
  makePartSheet,
  type PackMaterials,
  type Recipe,
  type RecipePart,
  type Stock,
  valuesOf,
} from '../sheets/index.ts';
import { usedBy } from './hand-made.ts';
import { fitsDot, fittingCount, isLaidOut } from './stock.ts';

/** A part and the only colours that its sheets may have; absent: all. */
export interface Way {
  readonly part: RecipePart;
  readonly colours?: readonly ColourName[];
}

/** What ways are sought for. */
export interface Sought {
  readonly recipe: Pick<Recipe, 'page' | 'print' | 'size' | 'colours' | 'parts'>;
  readonly part: RecipePart;
  /** What is left for it. */
  readonly left: Stock;
  /** Sheets that are still to be made, this one among them. */
  readonly sheets: number;
}

/** Any will do: it only shows what a sheet of such values takes. */
const PROBE_SEED = 1;
/** What is left for fewer sheets than this many times those wanted is scarce; our own choice. */
const PLENTY = 2;

/**
 * From the nearest to what was asked for to the farthest. The response that was asked for comes first and, where a
 * person has set it, is the only one; so do sizes of stickers, the largest that the house has first. Other values give
 * way to few colours only after all that leaves them as they are.
 */
export function* waysOf(sought: Sought): Iterable<Way> {
  for (const part of partsByResponse(sought)) {
    const sized = sizedParts(sought, part);
    for (const { part: one, needs } of sized) yield* waysIn(sought, one, needs, asAsked);
    for (const { part: one, needs } of sized) yield* waysIn(sought, one, needs, givingWay);
  }
}

function partsByResponse({ recipe, part }: Sought): readonly RecipePart[] {
  const activity = activityOf(part.activity);
  const { response } = activity.parameters;
  const others =
    response?.kind !== 'choice' || Object.hasOwn(part.values, 'response') ? [] : response.values;
  const own = ownValues(activity, part).response;
  return [
    part,
    ...others
      .filter((value) => value !== own)
      .flatMap((value) => settled(part, { ...part.values, response: value }, styleFor(recipe))),
  ];
}

/** The part with these values as they are and the others as near to its own as they go together; none where they do not. */
function settled(
  part: RecipePart,
  asked: RecipePart['values'],
  style: PrintStyle,
): readonly RecipePart[] {
  const activity = activityOf(part.activity);
  const own = ownValues(activity, part);
  const wanted = { ...own, ...part.values };
  // What the task is about is never what gives way.
  const { content } = wanted;
  const stays = { ...(content === undefined ? {} : { content }), ...asked };
  const values = settle(activity, wanted, stays, own, style);
  return values.ok ? [{ ...part, values: changesOf(part, values.value) }] : [];
}

function ownValues({ ladder }: Activity, { step }: RecipePart): Values {
  return ladder[step - 1]?.values ?? {};
}

interface Sized {
  readonly part: RecipePart;
  /** What one sheet of it takes, whatever its colours. */
  readonly needs: PackMaterials;
}

/** The part with each size of dots that the house has stickers for; those that leave fewer tasks on a page come last. */
function sizedParts(sought: Sought, part: RecipePart): readonly Sized[] {
  const own = probed(sought, part);
  if (own === undefined) return [];
  const size = activityOf(part.activity).parameters.stickerMm;
  const isSized = own.needs.stickers.length > 0 && size !== undefined;
  if (!isSized || Object.hasOwn(sought.part.values, 'stickerMm')) return [own];
  const sized = sizesFor(size, sought)
    .flatMap(
      (stickerMm) => probed(sought, { ...part, values: { ...part.values, stickerMm } }) ?? [],
    )
    .filter(({ needs }) => hasSizes(needs, sought.left));
  return [
    ...sized.filter(({ tasks }) => tasks >= own.tasks),
    ...sized.filter(({ tasks }) => tasks < own.tasks),
  ];
}

/** Undefined where no such sheet can be had, or a tool or paper for it is not there. */
function probed(
  { recipe, left }: Sought,
  part: RecipePart,
): (Sized & { tasks: number }) | undefined {
  const made = makePartSheet(recipe, part, PROBE_SEED);
  if (!made.ok) return undefined;
  const needs = usedBy([made.value], left);
  return isLaidOut(needs, left) ? { part, needs, tasks: made.value.tasks.length } : undefined;
}

/** Whether there are stickers for all sizes of dots, of whatever colour. */
function hasSizes(needs: PackMaterials, { stickers }: Stock): boolean {
  return needs.stickers.every(({ diameterMm }) =>
    stickers.some((each) => each.count > 0 && fitsDot(each.diameterMm, diameterMm)),
  );
}

/**
 * Values of the size of dots, each the nearest to some stickers that are left, the largest first; for large print, which
 * has larger dots than that, all.
 */
function sizesFor(size: Parameter, { recipe, left }: Sought): readonly (number | string)[] {
  const values = valuesOfSize(size);
  if (recipe.size !== undefined) return [...values].reverse();
  const sizes = left.stickers.flatMap(({ diameterMm, count }) => {
    const nearest = values.find((value) => Number(value) >= diameterMm);
    return count > 0 && nearest !== undefined && fitsDot(diameterMm, Number(nearest))
      ? [nearest]
      : [];
  });
  return [...new Set(sizes)].sort((one, other) => Number(other) - Number(one));
}

/** Smallest first. */
function valuesOfSize(size: Parameter): readonly (number | string)[] {
  if (size.kind === 'whole') {
    return Array.from({ length: size.max - size.min + 1 }, (_, index) => size.min + index);
  }
  const choices = size.kind === 'choice' ? size.values : [];
  return [...choices].sort((one, other) => Number(one) - Number(other));
}

/** How the other values stand to few colours. */
type Giving = (sought: Sought, part: RecipePart, style: PrintStyle) => readonly RecipePart[];

const asAsked: Giving = (_, part, style) => (valuesOf({ ...part, ...style }).ok ? [part] : []);

/** The response and the size stay, and all that a person has set. */
const givingWay: Giving = (sought, part, style) => {
  if (valuesOf({ ...part, ...style }).ok) return [];
  const stays = Object.entries(part.values).filter(
    ([name]) =>
      name === 'response' || name === 'stickerMm' || Object.hasOwn(sought.part.values, name),
  );
  return settled(part, Object.fromEntries(stays), style);
};

function* waysIn(
  sought: Sought,
  part: RecipePart,
  needs: PackMaterials,
  giving: Giving,
): Iterable<Way> {
  for (const colours of colourSets(sought, needs)) {
    const style = styleFor({ ...sought.recipe, ...(colours === undefined ? {} : { colours }) });
    for (const given of giving(sought, part, style)) {
      yield { part: given, ...(colours === undefined ? {} : { colours }) };
    }
  }
}

function styleFor({ print, colours }: PrintStyle): PrintStyle {
  return { print, ...(colours === undefined ? {} : { colours }) };
}

/**
 * Colours of which something is left. Where there is plenty the most come first; where stickers are scarce the fewest,
 * those of which most are left, so that all are used up evenly.
 */
function colourSets(
  { recipe, left, sheets }: Sought,
  needs: PackMaterials,
): readonly (readonly ColourName[] | undefined)[] {
  if (needs.stickers.length + needs.crayons.length === 0) return [recipe.colours];
  const roomOf = roomIn(left, needs);
  const able = COLOUR_NAMES.filter((name) => recipe.colours?.includes(name) ?? true)
    .map((name) => ({ name, room: roomOf(name) }))
    .filter(({ room }) => room > 0)
    .sort((one, other) => other.room - one.room);
  const sets = able.map((_, last) => able.slice(0, last + 1).map(({ name }) => name));
  const need = needs.stickers.reduce((sum, { count }) => sum + count, 0) * sheets;
  const isScarce = able.reduce((sum, { room }) => sum + room, 0) < PLENTY * need;
  return isScarce ? sets : [...sets].reverse();
}

/** How many stickers there are of a colour in each size needed; where no stickers are needed, whether there is a crayon. */
function roomIn(left: Stock, { stickers, crayons }: PackMaterials): (name: ColourName) => number {
  const sizes = [...new Set(stickers.map(({ diameterMm }) => diameterMm))];
  return (name) => {
    if (crayons.length > 0 && !left.crayons.includes(name)) return 0;
    if (sizes.length === 0) return 1;
    return Math.min(...sizes.map((size) => fittingCount(name, size, left.stickers)));
  };
}
