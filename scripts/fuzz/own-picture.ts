// Own pictures: stored path data, the first bytes of a file, and the pixels of a photo.
/// <reference path="../../src/web/pictures/imagetracerjs.d.ts" />
import fc from 'fast-check';
import {
  checkOwnPicture,
  knowOwnPicture,
  type OwnPicture,
  ownFormOf,
} from '../../src/figures/index.ts';
import { drawFigure } from '../../src/page/index.ts';
import { svgOf } from '../../src/press/index.ts';
import { readEntry } from '../../src/records/index.ts';
import { readHeader } from '../../src/web/pictures/image-header.ts';
import { CROPS, SIDE, simplified } from '../../src/web/pictures/simplify.ts';
import { OWN_PICTURES } from './bases.ts';
import { changedValues, jsonText } from './changed-json.ts';
import { hostileText } from './hostile.ts';
import type { Kind } from './kind.ts';
import { acceptedOrTold } from './must-hold.ts';

const PICTURE_MM = 20;
const FRAME = { id: '0199c7f2-8e00-7000-8000-000000000001', at: 0, kind: 'picture' };

/** Path data that is nearly right, and such as makes very much of few characters. */
const number = fc.oneof(
  fc.integer({ min: -500, max: 500 }).map(String),
  fc.constantFrom('0', '-0', '999', '-999', '1000', '1e3', '0.5', 'NaN', '', '٣', '-', '--1'),
);
const point = fc.tuple(number, number).map(([x, y]) => `${x} ${y}`);
const step = fc.oneof(
  point.map((at) => `L${at}`),
  fc.tuple(point, point).map(([one, two]) => `Q${one} ${two}`),
  fc.tuple(point, point, point).map((all) => `C${all.join(' ')}`),
  fc.constantFrom('Z', 'M0 0', 'A1 1 0 0 0 1 1', 'm0 0', '<script>', '\u0000'),
);
const path = fc.oneof(
  { weight: 3, arbitrary: fc.array(step, { maxLength: 8 }).map((all) => `M0 0${all.join('')}Z`) },
  { weight: 3, arbitrary: fc.constantFrom(...OWN_PICTURES.map(({ outline }) => outline)) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 1100 }).map((n) => 'M0 0L9 9Z'.repeat(n)) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 1500 }).map((n) => `M0 0${'L9 9'.repeat(n)}`) },
  { weight: 1, arbitrary: hostileText },
);
const fill = fc.oneof(
  fc.constantFrom('#336699', '#000000', 'red', 'url(#x)', '#33669G'),
  hostileText,
);
const part = fc.oneof(fc.tuple(fill, path), fc.tuple(fill, path, fc.constant(1)));
const picture = fc.record(
  { name: hostileText, outline: path, parts: fc.array(part, { maxLength: 9 }) },
  { requiredKeys: ['outline', 'parts'] },
);

export function storedPathKind(): Kind<unknown> {
  return {
    name: 'stored-path',
    inputs: fc.oneof(
      { weight: 2, arbitrary: picture },
      { weight: 1, arbitrary: changedValues(OWN_PICTURES) },
    ),
    meet: (value) => {
      const fields = typeof value === 'object' && value !== null ? value : {};
      const entry = acceptedOrTold(readEntry({ ...fields, ...FRAME }, 'records'));
      if (entry?.kind !== 'picture') return;
      const id = acceptedOrTold(knowOwnPicture(asPicture(entry), 'records'));
      if (id === undefined) return;
      const node = drawFigure({ form: ownFormOf(id) }, 10, 10, PICTURE_MM, { print: 'colour' });
      svgOf({ widthMm: PICTURE_MM, heightMm: PICTURE_MM, title: '', nodes: [node] });
    },
    show: (value) => jsonText(value),
  };
}

function asPicture({ name, outline, parts }: OwnPicture): OwnPicture {
  return { ...(name === undefined ? {} : { name }), outline, parts };
}

const ascii = (text: string) => [...text].map((letter) => letter.charCodeAt(0));
const STARTS: readonly (readonly number[])[] = [
  [0x89, ...ascii('PNG\r\n\u001a\n'), 0, 0, 0, 13, ...ascii('IHDR'), 0, 0, 4, 0, 0, 0, 3, 0, 8, 6],
  [...ascii('GIF89a'), 0, 4, 0, 3],
  [...ascii('BM'), 0, 0, 0, 0, 0, 0, 0, 0, 54, 0, 0, 0, 40, 0, 0, 0, 0, 4, 0, 0, 0, 3, 0, 0],
  [...ascii('RIFF'), 0, 0, 0, 0, ...ascii('WEBPVP8X'), 0, 0, 0, 0, 0, 0, 0, 0, 9, 9, 0, 9, 9, 0],
  [...ascii('RIFF'), 0, 0, 0, 0, ...ascii('WEBPVP8L'), 0, 0, 0, 0, 0x2f, 1, 2, 3, 4, 0, 0, 0, 0, 0],
  [...ascii('RIFF'), 0, 0, 0, 0, ...ascii('WEBPVP8 '), 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 9, 9, 9, 9],
  [0xff, 0xd8, 0xff, 0xe0, 0, 4, 1, 1, 0xff, 0xc0, 0, 17, 8, 3, 0, 4, 0, 3, 1, 1],
  [0xff, 0xd8, 0xff, 0xe0, 0, 0, 0xff, 0xe1, 0xff, 0xff],
  [
    0,
    0,
    0,
    20,
    ...ascii('ftypavif'),
    0,
    0,
    0,
    20,
    ...ascii('ispe'),
    0,
    0,
    0,
    0,
    0,
    0,
    9,
    9,
    0,
    0,
    8,
    8,
  ],
  [
    0,
    0,
    0,
    20,
    ...ascii('ftypheic'),
    0,
    0,
    0,
    20,
    ...ascii('ispe'),
    0,
    0,
    0,
    0,
    0xff,
    9,
    9,
    9,
    0xff,
    8,
  ],
  ascii('<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a "&a;&a;">]><svg onload="x"/>'),
  ascii('  \n<SVG xmlns="http://www.w3.org/2000/svg"><script>1</script></SVG>'),
  [],
];

const imageBytes = fc
  .tuple(
    fc.constantFrom(...STARTS),
    fc.array(fc.tuple(fc.nat(80), fc.nat(255)), { maxLength: 6 }),
    fc.oneof(
      { weight: 40, arbitrary: fc.uint8Array({ maxLength: 60 }) },
      { weight: 1, arbitrary: fc.constantFrom(...[0, 0xff, 1].map((one) => filled(262_000, one))) },
    ),
    fc.nat(80),
  )
  .map(([start, flips, tail, cut]) => {
    const bytes = Uint8Array.from([...start, ...tail]);
    for (const [at, bits] of flips) {
      if (at < bytes.length) bytes[at] = (bytes[at] ?? 0) ^ bits;
    }
    return cut < 40 ? bytes.slice(0, cut) : bytes;
  });

function filled(length: number, value: number): Uint8Array<ArrayBuffer> {
  return new Uint8Array(length).fill(value);
}

export function imageBytesKind(): Kind<Uint8Array> {
  return {
    name: 'image-bytes',
    inputs: fc.oneof({ weight: 9, arbitrary: imageBytes }, fc.uint8Array({ maxLength: 300 })),
    meet: (bytes) => {
      const header = readHeader(bytes);
      if (typeof header === 'string') return;
      const { width = 0, height = 0 } = header;
      if (!(width >= 0 && height >= 0)) throw new Error(`a picture of ${width} by ${height}`);
    },
    show: (bytes) => Buffer.from(bytes.subarray(0, 300)).toString('hex'),
  };
}

interface Photo {
  readonly kind: number;
  readonly values: readonly number[];
  readonly block: number;
  readonly crop: (typeof CROPS)[number];
  readonly colours: number;
  readonly cutOut: boolean;
}

/** Pixels in blocks, stripes or noise of a few values, opaque or not. */
function pixelsOf({ kind, values, block }: Photo): Uint8ClampedArray {
  return Uint8ClampedArray.from({ length: 4 * SIDE * SIDE }, (_, index) => {
    const cell = index >> 2;
    const [x, y] = [Math.floor((cell % SIDE) / block), Math.floor(cell / SIDE / block)];
    const which =
      kind === 0 ? x + 7 * y : kind === 1 ? x : kind === 2 ? x * y : x ^ (y * 31 + cell);
    return values[(which * 4 + (index % 4)) % values.length] ?? 0;
  });
}

export function photoKind(): Kind<Photo> {
  return {
    name: 'photo',
    inputs: fc.record({
      kind: fc.nat(3),
      values: fc.array(fc.oneof(fc.constantFrom(0, 255, 128), fc.nat(255)), {
        minLength: 1,
        maxLength: 24,
      }),
      block: fc.constantFrom(1, 2, 5, 16, 40, 64, 200),
      crop: fc.constantFrom(...CROPS),
      colours: fc.integer({ min: 2, max: 6 }),
      cutOut: fc.boolean(),
    }),
    meet: (photo) => {
      const made = simplified(pixelsOf(photo), photo);
      if ('picture' in made) acceptedOrTold(checkOwnPicture(made.picture, 'photo'));
    },
    show: (photo) => JSON.stringify(photo),
  };
}
