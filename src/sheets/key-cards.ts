// The key or the model of a sheet once more, as a card to cut out and lay beside it.
import { activityOf, type Language, type Size } from '../activities/index.ts';
import { compose, moveBy, scaleBy, type Transform, transformPath } from '../base/index.ts';
import {
  type Area,
  type FoundGroup,
  type Group,
  group,
  groupsWithRole,
  inkArea,
  kept,
  type Orientation,
  type Page,
  placeScaled,
  type SceneNode,
} from '../page/index.ts';
import { cardLabel, LABEL_MM, PAD_MM } from './card-parts.ts';
import { type CutPageChoice, cutArea, cutLine, cutPage } from './cut-page.ts';
import { placedInRows } from './cut-rows.ts';
import { pageWords } from './page-catalogue.ts';
import { placedTasks } from './placed-tasks.ts';
import type { Sheet } from './sheet.ts';
import { styleOf } from './sheet-spec.ts';

/** The roles of what a child looks back at while working. */
const LOOKED_BACK_AT = ['key', 'model'];

export interface KeyCard {
  /** As it stands on the task, from the corner of its ink. */
  readonly drawing: Group;
  readonly widthMm: number;
  readonly heightMm: number;
  /** The code of every sheet that it serves, and of which tasks where a sheet has several. */
  readonly label: string;
}

/** For each sheet the cards that follow it; a sheet whose keys all stand on earlier cards has none. */
export function keyCardsOf(
  sheets: readonly Sheet[],
  language: Language = 'en',
): readonly (readonly KeyCard[])[] {
  const cards = new Map<string, { key: Key; serves: Map<Sheet, number[]> }>();
  for (const sheet of sheets) {
    for (const [index, key] of keysOf(sheet, language).entries()) {
      if (!key) continue;
      const card = cards.get(key.looks) ?? { key, serves: new Map<Sheet, number[]>() };
      card.serves.set(sheet, [...(card.serves.get(sheet) ?? []), index + 1]);
      cards.set(key.looks, card);
    }
  }
  return sheets.map((sheet) =>
    [...cards.values()]
      .filter(({ serves }) => [...serves.keys()][0] === sheet)
      .map(({ key, serves }) => ({
        drawing: key.drawing,
        widthMm: key.ink.width,
        heightMm: key.ink.height,
        label: [...serves].map(([each, tasks]) => servedText(each, tasks)).join(', '),
      })),
  );
}

/** Whether a child looks back at a key or a model on the sheet. */
export function hasKey(sheet: Sheet): boolean {
  return keysOf(sheet, 'en').some((key) => key !== undefined);
}

function servedText({ code, tasks }: Sheet, numbers: readonly number[]): string {
  return tasks.length === numbers.length ? code : `${code} · ${numbers.join(', ')}`;
}

interface Key {
  readonly drawing: Group;
  readonly ink: Area;
  /** Equal for keys that look the same, wherever they stand. */
  readonly looks: string;
}

/** For each task its key or model; undefined where it has none, or several things of that kind. */
function keysOf(sheet: Sheet, language: Language): readonly (Key | undefined)[] {
  const { spec } = sheet;
  return placedTasks(sheet, language).map(({ task, size, times }) => {
    const drawn = activityOf(spec.activity).draw(task, size, styleOf(spec, language), false);
    const [found, ...others] = groupsWithRole(drawn, LOOKED_BACK_AT, scaleBy(times));
    return found && others.length === 0 ? keyOf(found) : undefined;
  });
}

function keyOf({ group: found, transform }: FoundGroup): Key | undefined {
  const ink = inkArea(found, transform);
  if (!ink) return undefined;
  const toCorner = compose(moveBy(-ink.left, -ink.top), transform);
  const [scale, , , , x] = transform;
  const middle = (ink.left + ink.width / 2 - x) / scale;
  const drawing = { ...kept(group('key-drawing', [found]), middle), transform: toCorner };
  return { drawing, ink, looks: JSON.stringify(looksOf(drawing, moveBy(0, 0))) };
}

/** All shapes and words in hundredths of a mm. */
function looksOf(node: SceneNode, outer: Transform): readonly unknown[] {
  switch (node.kind) {
    case 'group': {
      const inner = node.transform ? compose(outer, node.transform) : outer;
      const clip = node.clip ? [rounded(transformPath(node.clip, inner))] : [];
      return [...clip, ...node.children.map((child) => looksOf(child, inner))];
    }
    case 'shape':
      return [rounded(transformPath(node.path, outer)), node.fill, node.stroke];
    case 'text':
      return [node.text, node.emMm];
  }
}

function rounded(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (_, part: unknown) =>
      typeof part === 'number' ? Math.round(100 * part) : part,
    ),
  );
}

/** The pages of a sheet's cards: one below the other, as many as a page has room for. */
export function keyCardPages(
  sheet: Sheet,
  cards: readonly KeyCard[],
  language: Language = 'en',
): readonly Page[] {
  if (cards.length === 0) return [];
  const words = pageWords(language).cut;
  const page = pageFor(sheet, cards);
  const area = cutArea(page, 0);
  const sized = cards.map((card) => ({ card, ...sizeWithin(card, area) }));
  const pages = placedInRows([sized], area);
  return pages.map((placed, index) =>
    cutPage({
      language,
      page,
      title: words.keyTitle(sheet.code),
      foot: [words.key(sheet.code), words.page(index + 1, pages.length)],
      nodes: placed.map(({ item, place }) => drawCard(item.card, place, words.keyAlt)),
    }),
  );
}

/** The sheet's page, or the same paper turned where only that is wide enough. */
function pageFor({ spec }: Sheet, cards: readonly KeyCard[]): CutPageChoice {
  const turned: Orientation = spec.page.orientation === 'portrait' ? 'landscape' : 'portrait';
  const fits = (page: CutPageChoice) => {
    const { width, height } = cutArea(page, 0);
    return cards.every((card) => {
      const { widthMm, heightMm } = sizeOf(card);
      return widthMm <= width && heightMm <= height;
    });
  };
  const other = { ...spec.page, orientation: turned };
  return !fits(spec.page) && fits(other) ? other : spec.page;
}

function sizeOf({ widthMm, heightMm }: KeyCard): Size {
  return { widthMm: widthMm + 2 * PAD_MM, heightMm: heightMm + PAD_MM + LABEL_MM };
}

/** A card that is wider than the page has less blank at its sides. */
function sizeWithin(card: KeyCard, { width, height }: Area): Size {
  const { widthMm, heightMm } = sizeOf(card);
  return { widthMm: Math.min(widthMm, width), heightMm: Math.min(heightMm, height) };
}

function drawCard(card: KeyCard, place: Area, alt: string): Group {
  const pad = Math.min(PAD_MM, Math.max(0, (place.width - card.widthMm) / 2));
  const inside = {
    left: place.left + pad,
    top: place.top + PAD_MM,
    width: place.width - 2 * pad,
    height: place.height - PAD_MM - LABEL_MM,
  };
  const key = placeScaled({ ...group('key-place', [card.drawing]), alt }, card, inside);
  return group('key-card', [cutLine(place), key, cardLabel(card.label, place)]);
}
