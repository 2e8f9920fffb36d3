// What a child sees in pictures beside their outlines: the colour that most of one has, and its way of life.
import { type Bounds, flattenPath, type Point, pathBounds } from '../../base/index.ts';
import { type Figure, type FormId, formOf, isPicture, partsOf } from '../../figures/index.ts';
import { COLOUR_NAMES, type ColourName, type Hex } from '../../palette/index.ts';

/** Side of the net of points at which a picture is looked at. */
const NET = 24;

const known = new Map<FormId, ColourName>();

/** The name of the colour that most of the picture shows. */
export function mainColourOf(figure: Figure): ColourName {
  const form = formOf(figure);
  const colour = known.get(form) ?? measureMainColour(form);
  known.set(form, colour);
  return colour;
}

function measureMainColour(form: FormId): ColourName {
  // The foremost first.
  const parts = [...partsOf({ form })].reverse().map(({ fill, path }) => ({
    name: nameOf(fill),
    lines: flattenPath(path),
    bounds: pathBounds(path),
  }));
  const seen = netPoints().flatMap((point) => {
    const top = parts.find(({ bounds, lines }) => isWithin(point, bounds) && holds(lines, point));
    return top ? [top.name] : [];
  });
  const counts = COLOUR_NAMES.map((name) => seen.filter((other) => other === name).length);
  return COLOUR_NAMES[counts.indexOf(Math.max(...counts))] ?? 'black';
}

function isWithin({ x, y }: Point, { left, right, top, bottom }: Bounds): boolean {
  return x >= left && x <= right && y >= top && y <= bottom;
}

function netPoints(): readonly Point[] {
  const steps = Array.from({ length: NET }, (_, step) => (step + 0.5) / NET - 0.5);
  return steps.flatMap((y) => steps.map((x) => ({ x, y })));
}

/** Ends of the hues that go by one name, in degrees round the circle of HSL; by eye. */
const HUES: readonly (readonly [endDeg: number, name: ColourName])[] = [
  [15, 'red'],
  [45, 'orange'],
  [64, 'yellow'],
  [170, 'green'],
  [255, 'blue'],
  [300, 'purple'],
  [345, 'pink'],
  [360, 'red'],
];
/** Below, a colour is a grey; above or below, light or dark ones go by other names; shares, by eye. */
const LEAST_CHROMA = 0.15;
const LIGHT = 0.72;
const DARK = 0.38;

/** By hue, since what is light or dark goes by the name of its hue but for a few. */
function nameOf(fill: Hex): ColourName {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map(
    (at) => Number.parseInt(fill.slice(at, at + 2), 16) / 255,
  );
  const [most, least] = [Math.max(red, green, blue), Math.min(red, green, blue)];
  const [chroma, lightness] = [most - least, (most + least) / 2];
  if (chroma < LEAST_CHROMA) return lightness > 0.9 ? 'white' : lightness < 0.2 ? 'black' : 'grey';
  const sector =
    most === red
      ? ((green - blue) / chroma + 6) % 6
      : most === green
        ? (blue - red) / chroma + 2
        : (red - green) / chroma + 4;
  const name = HUES.find(([endDeg]) => Math.round(60 * sector) <= endDeg)?.[1] ?? 'red';
  if (name === 'red' && lightness > LIGHT) return 'pink';
  return (name === 'red' || name === 'orange') && lightness < DARK && chroma < 0.6 ? 'brown' : name;
}

/** Even-odd: how often a ray to the right crosses the outline. */
function holds(lines: readonly (readonly Point[])[], { x, y }: Point): boolean {
  const crossings = lines.flatMap((line) =>
    line.filter((from, index) => {
      const to = line[(index + 1) % line.length] ?? from;
      if (from.y > y === to.y > y) return false;
      return x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x);
    }),
  );
  return crossings.length % 2 === 1;
}

/** Kinds within a category that a child may go by, such as what flies among animals; by eye. */
const WAYS: Readonly<Record<string, string>> = {
  swims: 'fish whale crab frog turtle sailing-boat',
  flies: 'butterfly ladybird bee owl duck penguin plane helicopter rocket kite balloon',
  crawls: 'snail snake',
  rolls: 'car bus fire-engine tractor',
  'rolls otherwise': 'bicycle train',
  'grows to be eaten': 'apple pear banana strawberry cherries grapes',
  'grows in the ground': 'carrot',
  sweet: 'ice-cream cake lollipop',
  flower: 'tulip sunflower',
  'tree or leaf': 'palm-tree tree fir-tree maple-leaf clover',
};

/** The way of life or of use of what a picture shows; `none` where nothing is said of it. */
export function wayOf(figure: Figure): string {
  const form = formOf(figure);
  if (!isPicture(form)) return 'none';
  const name = form.slice('picture-'.length);
  const way = Object.entries(WAYS).find(([, names]) => names.split(' ').includes(name));
  return way?.[0] ?? 'none';
}
