// What of a printed task can be changed, found in any activity by its form alone: figures, lists, facts.
import type { Language } from '../activities/index.ts';
import {
  colourName,
  type Figure,
  figureSchema,
  fillName,
  formName,
  SIGNS,
  TEXTURES,
  traced,
} from '../figures/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';

/** From the printed facts down to one value: names of fields, and numbers in lists from 0. */
export type Path = readonly (string | number)[];

/** Where a figure stands, or could; its number is its index among all places of the task. */
export interface Place {
  readonly path: Path;
  /** `null`: nothing stands there. */
  readonly figure: Figure | null;
}

/** A value beside the figures: a number that the page tells, or what a key asks for. */
export interface Fact {
  readonly path: Path;
  readonly value: number | string;
}

/** A list that holds figures, or things that hold figures. */
export interface List {
  readonly path: Path;
  readonly length: number;
}

/** Every place, in an order that hangs on nothing but the facts themselves: fields by their names. */
export function placesIn(printed: unknown): readonly Place[] {
  const places: Place[] = [];
  walk(printed, [], (value, path) => {
    const isPlace = value === null || isFigure(value);
    if (isPlace) places.push({ path, figure: value });
    return isPlace;
  });
  return places;
}

/** Whether two tasks have the same places, whatever stands there. */
export function haveSamePlaces(one: readonly Place[], other: readonly Place[]): boolean {
  return (
    one.length === other.length &&
    one.every(({ path }, place) => path.join() === other[place]?.path.join())
  );
}

/** Every list with places in it, the outer before the inner ones. */
export function listsIn(printed: unknown): readonly List[] {
  const lists: List[] = [];
  walk(printed, [], (value, path) => {
    if (Array.isArray(value) && placesIn(value).length > 0) {
      lists.push({ path, length: value.length });
    }
    return isFigure(value);
  });
  return lists;
}

/** Whole numbers on top, and colours, signs and textures anywhere beside the figures. */
export function factsIn(printed: unknown): readonly Fact[] {
  const facts: Fact[] = [];
  walk(printed, [], (value, path) => {
    if (typeof value === 'number' && Number.isInteger(value) && path.length === 1) {
      facts.push({ path, value });
    }
    if (typeof value === 'string' && choicesFor(value).length > 0) facts.push({ path, value });
    return isFigure(value);
  });
  return facts;
}

/** What could stand in place of a fact that is a word; empty where it is not one of a known kind. */
export function choicesFor(value: string): readonly string[] {
  const kinds: readonly (readonly string[])[] = [COLOUR_NAMES, SIGNS, TEXTURES];
  return kinds.find((kind) => kind.includes(value)) ?? [];
}

/** What a fact that is a word is called: a colour, a sign or a texture. */
export function factName(value: string, language: Language): string {
  const colour = COLOUR_NAMES.find((name) => name === value);
  const sign = SIGNS.find((name) => name === value);
  const texture = TEXTURES.find((name) => name === value);
  if (colour !== undefined) return colourName(colour, language);
  if (sign !== undefined) return formName(sign, language);
  return texture === undefined ? value : fillName(texture, language);
}

/** The same facts with one value changed; all else is shared. */
export function withValue(printed: unknown, path: Path, value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(printed)) {
    return printed.map((item, index) => (index === step ? withValue(item, rest, value) : item));
  }
  const record = printed as Readonly<Record<string, unknown>>;
  return { ...record, [step]: withValue(record[step], rest, value) };
}

export function valueAt(printed: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) => (value as Readonly<Record<string | number, unknown>> | undefined)?.[step],
    printed,
  );
}

/** The same facts in which each figure is an object of its own and knows its place. */
export function tracedTask(printed: unknown): unknown {
  return placesIn(printed).reduce<unknown>(
    (facts, { path, figure }, place) =>
      figure === null ? facts : withValue(facts, path, traced(figure, place)),
    printed,
  );
}

/** Facts are equal if they say the same, whatever the order of their fields. */
export function sameFacts(one: unknown, other: unknown): boolean {
  return canonical(one) === canonical(other);
}

function canonical(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === 'object' && part !== null && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)))
      : part,
  );
}

function isFigure(value: unknown): value is Figure {
  return (
    typeof value === 'object' &&
    value !== null &&
    !Array.isArray(value) &&
    figureSchema.safeParse(value).success
  );
}

/** Calls `visit` for each value, outer first; what it says `true` of is not entered. */
function walk(value: unknown, path: Path, visit: (value: unknown, path: Path) => boolean): void {
  if (visit(value, path) || typeof value !== 'object' || value === null) return;
  if (Array.isArray(value)) {
    for (const [index, item] of value.entries()) walk(item, [...path, index], visit);
    return;
  }
  const fields = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1));
  for (const [name, item] of fields) if (item !== undefined) walk(item, [...path, name], visit);
}
