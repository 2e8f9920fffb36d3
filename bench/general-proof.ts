// The whole proof told to a general solver (MiniSat): all answers under every reading that our solvers follow.
import Logic, { type Formula } from 'logic-solver';
import {
  type Figure,
  fairlyDifferent,
  formOf,
  layoutOf,
  mirrorTurnDeg,
  sameFigure,
  symmetryTurnDeg,
} from '../src/figures/index.ts';
import { type Boxes, nameOf } from './general-solver.ts';

/** What is printed of a by-key task, as far as its answers go. */
export interface Keyed {
  readonly key: readonly {
    readonly figure: Figure;
    readonly response: {
      readonly kind: string;
      readonly colour?: string;
      readonly sign?: string;
      readonly texture?: string;
    };
  }[];
  readonly items: readonly Figure[];
}

const MOST_ANSWERS = 20;

/** The names of the figures in every box: each set of them that some reading leads to; none where all figures differ. */
export function boxAnswersBySolver({ boxes }: Boxes): readonly (readonly string[])[] {
  const kinds = boxes
    .flatMap((box) => box.figures)
    .filter((one, at, all) => all.findIndex((other) => sameFigure(one, other)) === at);
  const figures = kinds.map((figure) => [nameOf(figure), figure] as const);
  const kindOf = (figure: Figure) => kinds.find((kind) => sameFigure(kind, figure)) ?? figure;
  const held = boxes.map((box) => new Set(box.figures.map((figure) => nameOf(kindOf(figure)))));
  const isDirectionMeant = new Set(figures.map(([, figure]) => formOf(figure))).size === 1;
  const readings: readonly Likeness[] = [
    () => false,
    (one, other) => !fairlyDifferent(one, other),
    ...(isDirectionMeant ? [] : [isTurnedSame]),
  ];
  const solver = new Logic.Solver();
  const stands = (name: string, box: number) => `${box} holds ${name}`;
  for (const [name] of figures) {
    for (const [box, names] of held.entries()) {
      if (names.has(name)) solver.require(stands(name, box));
      else solver.forbid(stands(name, box));
    }
  }
  const inEvery = (names: readonly string[]) =>
    Logic.and(...held.map((_, box) => Logic.or(...names.map((name) => stands(name, box)))));
  solver.require(Logic.or(...figures.map(([name]) => inEvery([name]))));
  solver.require(Logic.exactlyOne(...readings.map((_, reading) => `reading ${reading}`)));
  for (const [reading, isLike] of readings.entries()) {
    for (const [name, figure] of figures) {
      const likes = figures.filter(([other, one]) => other === name || isLike(figure, one));
      const found = inEvery(likes.map(([other]) => other));
      solver.require(Logic.implies(`reading ${reading}`, Logic.equiv(`in all ${name}`, found)));
    }
  }
  const asked = figures.map(([name]) => `in all ${name}`);
  const answers = projected(solver, asked);
  return answers.map((chosen) => chosen.map((one) => one.slice('in all '.length)));
}

type Likeness = (one: Figure, other: Figure) => boolean;

function isTurnedSame(one: Figure, other: Figure): boolean {
  const upright = { turn: 0, mirrored: false };
  return sameFigure({ ...one, ...upright }, { ...other, ...upright });
}

/** What an eye can go by, each as a text that is the same where two figures look the same in it. */
const TRAITS: readonly ((figure: Figure) => string)[] = [
  formOf,
  ({ colour = 'black' }) => colour,
  ({ size = 1 }) => String(size),
  lieOf,
  ({ count = 0 }) => String(count),
  (figure) => (formOf(figure) === 'dots' && figure.count !== 1 ? layoutOf(figure) : ''),
  ({ fill = 'solid' }) => fill,
];

function lieOf(figure: Figure): string {
  const { turn = 0, mirrored = false } = figure;
  const back = mirrored ? mirrorTurnDeg(formOf(figure)) : 0;
  const period = symmetryTurnDeg(formOf(figure));
  return `${back === undefined ? 'mirrored' : ''} ${(turn + (back ?? 0)) % period}`;
}

/**
 * For each item the entry it is treated by, in every way: the solver chooses for each item which traits to go by, such
 * that all entries of the key differ in one of them, and an entry like the item in all of these; or one that the item
 * can be taken for by eye, or whose response it shows already. Up to 20.
 */
export function keyAnswersBySolver({ key, items }: Keyed): readonly (readonly number[])[] {
  const solver = new Logic.Solver();
  const differing = TRAITS.filter(
    (trait) => new Set(key.map(({ figure }) => trait(figure))).size > 1,
  );
  for (const [item, figure] of items.entries()) {
    const used = (trait: number) => `item ${item} by trait ${trait}`;
    const usedWhere = (one: Figure, other: Figure) =>
      differing.flatMap((trait, at) => (trait(one) === trait(other) ? [] : [used(at)]));
    for (const [place, { figure: one }] of key.entries()) {
      for (const { figure: other } of key.slice(place + 1)) {
        solver.require(Logic.or(...usedWhere(one, other)));
      }
    }
    solver.require(Logic.exactlyOne(...key.map((_, entry) => chosen(item, entry))));
    for (const [entry, { figure: model, response }] of key.entries()) {
      if (!fairlyDifferent(figure, model) || shows(figure, response)) continue;
      for (const trait of usedWhere(figure, model)) {
        solver.require(Logic.not(Logic.and(chosen(item, entry), trait)));
      }
    }
  }
  const asked = items.flatMap((_, item) => key.map((_, entry) => chosen(item, entry)));
  return projected(solver, asked).map((found) =>
    items.map((_, item) => key.findIndex((_, entry) => found.includes(chosen(item, entry)))),
  );
}

function chosen(item: number, entry: number): string {
  return `item ${item} entry ${entry}`;
}

function shows(figure: Figure, { colour, sign, texture }: Keyed['key'][number]['response']) {
  if (sign !== undefined) return formOf(figure) === sign;
  return texture !== undefined ? figure.fill === texture : figure.colour === colour;
}

/** The true ones among some variables in each solution that differs in them, up to 20. */
function projected(
  solver: InstanceType<typeof Logic.Solver>,
  asked: readonly string[],
): readonly (readonly string[])[] {
  const found: (readonly string[])[] = [];
  while (found.length < MOST_ANSWERS) {
    const solution = solver.solve();
    if (!solution) break;
    const all = new Set(solution.getTrueVars());
    found.push(asked.filter((one) => all.has(one)));
    const literals = asked.map((one): Formula => (all.has(one) ? one : Logic.not(one)));
    solver.forbid(Logic.and(...literals));
  }
  return found;
}
