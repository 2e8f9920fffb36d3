// Writes the table of pictures from an emoji set that is not part of this package; run by hand after a new
// choice: npm install @iconify-json/fluent-emoji-flat@1.2.6 paper@0.12.20 polygon-clipping@0.15.7 in an empty folder, then
// node scripts/make-pictures.mjs <that folder>
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { resolve } from 'node:path';
import { Resvg } from '@resvg/resvg-js';
import { CHOSEN } from './chosen-pictures.mjs';

const TARGET = new URL('../src/figures/pictures.generated.json', import.meta.url);

/** Farthest point of a picture from the middle of its cell, in cell sides: inside at every turn. */
const REACH = 0.49;
/** Numbers in the table are whole thousandths of the cell. */
const UNITS = 1000;
/** Holes and islands of the outline smaller than this, in cell areas, are slivers between parts. */
const SLIVER = 0.0003;

const fromFolder = createRequire(resolve(process.argv[2] ?? '.', 'package.json'));
const paper = fromFolder('paper/dist/paper-core.js');
const clipping = fromFolder('polygon-clipping');
const { icons } = fromFolder('@iconify-json/fluent-emoji-flat/icons.json');
const { version } = fromFolder('@iconify-json/fluent-emoji-flat/package.json');
paper.setup([64, 64]);

/** The parts of a picture, each with its colour; refuses anything but paths and circles filled flatly. */
function partsOf(source) {
  const body = icons[source]?.body;
  if (!body)
    throw new Error(`make-pictures › ${source}: expected a picture of that name, got none`);
  return [...body.matchAll(/<(\w+)([^>]*)>/g)].flatMap(([tag, name, attributes]) => {
    const given = Object.fromEntries(
      [...attributes.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]),
    );
    if (name === 'g' && given.fill === 'none') return [];
    if (!given.fill?.startsWith('#')) throw new Error(`make-pictures › ${source}: got ${tag}`);
    return [{ fill: longHex(given.fill), item: itemOf(name, given, tag) }];
  });
}

function itemOf(name, given, tag) {
  if (name === 'circle') {
    return new paper.Path.Circle([Number(given.cx), Number(given.cy)], Number(given.r));
  }
  if (name !== 'path') throw new Error(`make-pictures: expected a path or a circle, got ${tag}`);
  const item = new paper.CompoundPath(given.d);
  item.fillRule = given['fill-rule'] ?? 'nonzero';
  return item;
}

function longHex(hex) {
  return hex.length === 4 ? `#${[...hex.slice(1)].map((digit) => digit + digit).join('')}` : hex;
}

/** Longest chord in place of a curve, and how far the outline may stray for fewer points, in cell sides. */
const CHORD = 0.004;
const STRAY = 0.0008;

/** What all parts cover together: polygons, since the union of curves loses some; holes wound the other way. */
function outlineOf(parts) {
  const united = clipping.union(...parts.map(({ item }) => coverOf(item)));
  const rings = united.flat().map((ring) => simplified(ring.slice(0, -1)));
  const outline = new paper.CompoundPath({
    children: rings.map((ring) => new paper.Path({ segments: ring, closed: true })),
  });
  for (const child of [...outline.children]) {
    if (Math.abs(child.area) < SLIVER * 32 * 32) child.remove();
  }
  outline.reorient(true, true);
  return outline;
}

/** The area of one part; contours of either direction cancel each other where they overlap. */
function coverOf(item) {
  const rings = (item.children ?? [item]).map((child) => {
    const count = Math.ceil(child.length / (CHORD * 32));
    const ends = child.curves.flatMap((curve) => {
      const pieces = curve.isStraight() ? 1 : Math.ceil((curve.length / child.length) * count);
      return Array.from({ length: pieces }, (_, piece) => curve.getPointAtTime(piece / pieces));
    });
    return { area: child.area, ring: [ends.map(({ x, y }) => [x, y])] };
  });
  if (item.fillRule === 'evenodd') return clipping.xor(...rings.map(({ ring }) => ring));
  const [one, other] = [true, false].map((isClockwise) =>
    rings.filter(({ area }) => area > 0 === isClockwise).map(({ ring }) => ring),
  );
  return clipping.xor(clipping.union([], ...one), clipping.union([], ...other));
}

/** A closed ring with the points left out that lie within `STRAY` of the line without them (Douglas & Peucker 1973). */
function simplified(ring) {
  const start = ring[0];
  const far = ring.reduce((most, point) =>
    distance(point, start) > distance(most, start) ? point : most,
  );
  const middle = ring.indexOf(far);
  return [
    ...thinned(ring.slice(0, middle + 1)).slice(0, -1),
    ...thinned([...ring.slice(middle), start]).slice(0, -1),
  ];
}

function thinned(line) {
  const [first, last] = [line[0], line[line.length - 1]];
  const strays = line.map((point) => distanceToLine(point, first, last));
  const most = Math.max(...strays);
  if (most <= STRAY * 32) return [first, last];
  const at = strays.indexOf(most);
  return [...thinned(line.slice(0, at + 1)).slice(0, -1), ...thinned(line.slice(at))];
}

function distance([x1, y1], [x2, y2]) {
  return Math.hypot(x1 - x2, y1 - y2);
}

function distanceToLine(point, first, last) {
  const length = distance(first, last);
  if (length === 0) return distance(point, first);
  const [dx, dy] = [last[0] - first[0], last[1] - first[1]];
  return Math.abs(dx * (point[1] - first[1]) - dy * (point[0] - first[0])) / length;
}

/** Into a cell of side 1 about (0, 0): the middle of its bounds in the middle, as large as turns allow. */
function cellMatrix(outline) {
  const { center } = outline.bounds;
  const reach = Math.max(
    ...outline.children.flatMap((child) =>
      Array.from({ length: 400 }, (_, step) =>
        child.getPointAt((child.length * step) / 400).getDistance(center),
      ),
    ),
  );
  return new paper.Matrix().scale(REACH / reach).translate(center.multiply(-1));
}

/** As `M x y`, `L x y`, `C x y x y x y` and `Z`, in thousandths of the cell. */
function textOf(item, matrix) {
  const placed = item.clone().transform(matrix);
  const at = (point) => `${Math.round(point.x * UNITS)} ${Math.round(point.y * UNITS)}`;
  return (placed.children ?? [placed])
    .filter((child) => child.segments.length > 1)
    .map((child) => {
      const curves = child.curves.map((curve) =>
        curve.isStraight()
          ? `L${at(curve.point2)}`
          : `C${at(curve.point1.add(curve.handle1))} ${at(curve.point2.add(curve.handle2))} ${at(curve.point2)}`,
      );
      return `M${at(child.firstSegment.point)}${curves.join('')}Z`;
    })
    .join('');
}

/** Pixels along each side when a picture is compared with its mirror image. */
const SIDE = 96;
/** Pixels may differ by so much in a channel before they count, and so many of the inked may. */
const CHANNEL = 48;
const MIRROR_SHARE = 0.03;

function pixelsOf(parts, turn, scale) {
  const paths = parts.map(
    ([fill, d, rule]) => `<path fill="${fill}" fill-rule="${rule}" d="${d}"/>`,
  );
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${SIDE}" height="${SIDE}" viewBox="-500 -500 1000 1000"><g transform="rotate(${turn}) scale(${scale} 1)">${paths.join('')}</g></svg>`;
  return new Resvg(svg, { font: { loadSystemFonts: false } }).render().pixels;
}

/** The quarter turn after which the mirrored picture looks as before; none where no turn does that. */
function mirrorTurnOf(parts) {
  const plain = pixelsOf(parts, 0, 1);
  return [0, 90, 180, 270].find((turn) => {
    const other = pixelsOf(parts, turn, -1);
    let [inked, changed] = [0, 0];
    for (let pixel = 0; pixel < plain.length; pixel += 4) {
      if (plain[pixel + 3] < 128 && other[pixel + 3] < 128) continue;
      inked += 1;
      const differs = [0, 1, 2, 3].some(
        (channel) => Math.abs(plain[pixel + channel] - other[pixel + channel]) > CHANNEL,
      );
      if (differs) changed += 1;
    }
    return changed / inked < MIRROR_SHARE;
  });
}

function entryOf(source, category) {
  const parts = partsOf(source);
  const outline = outlineOf(parts);
  const matrix = cellMatrix(outline);
  const written = parts.map(({ fill, item }) => [fill, textOf(item, matrix), item.fillRule]);
  const mirrorTurn = mirrorTurnOf(written);
  return {
    category,
    ...(mirrorTurn === undefined ? {} : { mirrorTurn }),
    outline: textOf(outline, matrix),
    parts: written.map(([fill, path, rule]) =>
      rule === 'evenodd' ? [fill, path, 1] : [fill, path],
    ),
  };
}

const pictures = Object.fromEntries(
  Object.entries(CHOSEN).flatMap(([category, names]) =>
    names.split(' ').map((name) => {
      const [id, source = id] = name.split('=');
      return [id, entryOf(source, category)];
    }),
  ),
);
const entries = Object.entries(pictures).map(
  ([id, entry]) => `  ${JSON.stringify(id)}: ${JSON.stringify(entry)}`,
);
const source = `Outlines and colours of Fluent Emoji (flat), Microsoft Corporation, MIT licence, as in @iconify-json/fluent-emoji-flat ${version}`;
writeFileSync(
  TARGET,
  `{\n "source": ${JSON.stringify(source)},\n "units": ${UNITS},\n "pictures": {\n${entries.join(',\n')}\n }\n}\n`,
);
