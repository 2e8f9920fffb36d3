// A half-made sheet: printed as usual, but with an empty circle where each dot is to be stuck on.
import type { Language } from '../activities/index.ts';
import { circlePath, compose, IDENTITY, type Transform } from '../base/index.ts';
import { colourName } from '../figures/index.ts';
import {
  fitEm,
  type Group,
  group,
  type Page,
  QUIET_INK,
  type SceneNode,
  stroked,
  text,
  textWidthMm,
} from '../page/index.ts';
import { initialOf } from '../palette/index.ts';
import { type Sheet, sheetPage } from '../sheets/index.ts';
import { boundsOf, middleOf, scaleOf } from './bounds.ts';
import { byHandWords } from './catalogue.ts';
import { type Sticker, stickerFor } from './stickers.ts';

/** Line of a circle, inside its diameter, so that the sticker covers it; in mm. */
const CIRCLE_MM = 0.5;
/** The word in a circle: its em in mm, the least at which it is a word and not a mark, and its room, in diameters. */
const EM_MM = 3.2;
const LEAST_EM_MM = 2.2;
const ROOM_SHARE = 0.84;
const BASELINE_EMS = 0.3;

export interface HalfMade {
  readonly page: Page;
  /** The stickers that the adult puts on, one for each circle, in reading order. */
  readonly stickers: readonly Sticker[];
}

/** The sheet as it is printed for an adult who puts the dots on; with no dots, the sheet as ever. */
export function halfMade(
  sheet: Sheet,
  {
    language = 'en',
    stickerMm,
  }: { readonly language?: Language; readonly stickerMm?: number } = {},
): HalfMade {
  const stickers: Sticker[] = [];
  const emptied = (node: SceneNode, transform: Transform): SceneNode => {
    if (node.kind !== 'group') return node;
    const sticker = stickerOf(node, transform, stickerMm);
    if (sticker) {
      stickers.push(sticker);
      return emptyCircle(node, transform, sticker, language);
    }
    const inner = compose(transform, node.transform ?? IDENTITY);
    return { ...node, children: node.children.map((child) => emptied(child, inner)) };
  };
  const page = sheetPage(sheet, language);
  return { page: { ...page, nodes: page.nodes.map((node) => emptied(node, IDENTITY)) }, stickers };
}

function stickerOf(
  node: Group,
  transform: Transform,
  stickerMm: number | undefined,
): Sticker | undefined {
  if (!node.shows) return undefined;
  const piece = {
    kind: 'figure',
    figure: node.shows,
    bounds: boundsOf(node, transform),
    node,
    transform,
    isDashed: false,
  } as const;
  return stickerFor(piece, stickerMm);
}

/** In the coordinates of what it stands for; the name of the colour in it, or its mark where that has no room. */
function emptyCircle(
  node: Group,
  transform: Transform,
  { colour, diameterMm }: Sticker,
  language: Language,
): Group {
  const { x, y } = middleOf(boundsOf(node));
  const across = diameterMm / scaleOf(transform);
  const name = colourName(colour, language);
  const room = across * ROOM_SHARE;
  const emMm = fitEm(name, room, EM_MM, LEAST_EM_MM);
  const said = textWidthMm(name, emMm) <= room ? name : initialOf(colour);
  const line = stroked(circlePath(x, y, (across - CIRCLE_MM) / 2), {
    colour: QUIET_INK,
    widthMm: CIRCLE_MM,
  });
  const word = text(said, x, y + BASELINE_EMS * emMm, emMm, {
    anchor: 'middle',
    colour: QUIET_INK,
  });
  return group('circle', [line, word], byHandWords(language).circleFor(name));
}
