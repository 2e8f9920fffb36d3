// The adult's page of a pack: what to lay out, what to say and show, true size, cautions, the sheets.
import type { Language } from '../activities/index.ts';
import {
  type Area,
  type Block,
  heading,
  type Orientation,
  type Page,
  pageSize,
  printArea,
  type SceneNode,
  stackBlocks,
} from '../page/index.ts';
import { mainBlocks, proofBlock, sideBlocks, titleBlocks } from './adult-blocks.ts';
import type { Pack } from './pack.ts';
import { pageWords } from './page-catalogue.ts';
import { sheetList } from './sheet-list.ts';
import { DEFAULT_PAGE, type PageChoice } from './sheet-spec.ts';

const COLUMN_GAP_MM = 12;
/** The side column, with the 50 mm line and the cautions, is as high as the page has room for. */
const SIDE_MM: Readonly<Record<Orientation, number>> = { portrait: 62, landscape: 100 };
const SECTION_GAP_MM = 6;
/** Room kept for the heading and the first rows of the list of sheets. */
const LEAST_LIST_MM = 24;

/**
 * The adult's page. It runs on to further pages only where a pack holds more kinds of sheet than
 * one page can introduce; the list of sheets then stands on the last.
 */
export function adultPages(pack: Pack, language: Language = 'en'): readonly Page[] {
  const page = pack.sheets[0]?.spec.page ?? DEFAULT_PAGE;
  const area = printArea(page.paper, page.orientation);
  const size = pageSize(page.paper, page.orientation);
  const words = pageWords(language).adult;
  const title = stackBlocks(titleBlocks(pack, language, area.width), area);
  const body = below(area, title.heightMm + SECTION_GAP_MM);
  const { nodes, rest } = bodyNodes(pack, language, page, body);
  const first = { ...size, title: words.title, nodes: [title.group, ...nodes] };
  if (rest.length === 0) return [first];
  const further = furtherPages(rest, area, pack, language);
  return [first, ...further.map((more) => ({ ...size, title: words.continued, nodes: more }))];
}

interface Body {
  readonly nodes: readonly SceneNode[];
  /** What the first page has no room for; where there is any, the list of sheets is not in `nodes`. */
  readonly rest: readonly Block[];
}

/** Two columns, the list of sheets under both, the proof line at the foot. */
function bodyNodes(pack: Pack, language: Language, page: PageChoice, body: Area): Body {
  const proof = proofBlock(pack, language, body.width);
  const foot = proof.draw(body.left, body.top + body.height - proof.heightMm);
  const above = { ...body, height: body.height - proof.heightMm - SECTION_GAP_MM };
  const sideMm = SIDE_MM[page.orientation];
  const left = body.left + body.width - sideMm;
  const side = stackBlocks(sideBlocks(language, page.paper, sideMm), { ...above, left });
  const blocks = mainBlocks(pack, language, body.width - sideMm - COLUMN_GAP_MM);
  const main = stackBlocks(blocks, above);
  const usedMm = Math.max(side.heightMm, main.heightMm) + SECTION_GAP_MM;
  const listArea = below(above, usedMm);
  if (main.rest.length > 0) return { nodes: [main.group, side.group, foot], rest: main.rest };
  if (listArea.height >= LEAST_LIST_MM) {
    const list = sheetList(pack.sheets, listArea, language);
    return { nodes: [main.group, side.group, list, foot], rest: [] };
  }
  // The last part makes room for the list by going with it to the next page.
  const shorter = stackBlocks(blocks.slice(0, -1), above);
  return { nodes: [shorter.group, side.group, foot], rest: blocks.slice(-1) };
}

/** The blocks on as many pages as they need, the list of sheets below the last of them. */
function furtherPages(
  blocks: readonly Block[],
  area: Area,
  pack: Pack,
  language: Language,
): readonly (readonly SceneNode[])[] {
  const top = heading(pageWords(language).adult.continued, area.width, 2);
  const head = top.draw(area.left, area.top);
  const body = below(area, top.heightMm + SECTION_GAP_MM);
  const pages: (readonly SceneNode[])[] = [];
  let rest = blocks;
  let listArea = body;
  while (rest.length > 0) {
    const stack = stackBlocks(rest, body);
    pages.push([head, stack.group]);
    rest = stack.rest;
    listArea = below(body, stack.heightMm + SECTION_GAP_MM);
  }
  const hasRoom = listArea.height >= LEAST_LIST_MM;
  const list = sheetList(pack.sheets, hasRoom ? listArea : body, language);
  const before = hasRoom ? (pages.pop() ?? [head]) : [head];
  return [...pages, [...before, list]];
}

function below(area: Area, downMm: number): Area {
  return { ...area, top: area.top + downMm, height: area.height - downMm };
}
