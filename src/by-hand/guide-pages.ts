// The pages of a guide: how the sheet will look, what to lay out, the list to go through, and a page to copy.
import { activityOf, type Language } from '../activities/index.ts';
import {
  type Area,
  codeIn,
  columnsOf,
  drawFoot,
  heading,
  kept,
  type Page,
  pageIn,
  pageSize,
  paragraph,
  picture,
  printArea,
  QUIET_INK,
  type SceneNode,
  sheetArea,
  stackBlocks,
} from '../page/index.ts';
import { adultPaperOf, childOnSheet, footLabels } from '../sheets/index.ts';
import { byHandWords } from './catalogue.ts';
import { copyPage } from './copy-page.ts';
import type { Guide } from './guide.ts';
import { answerBlocks, layOutBlocks, noteBlocks, stepBlocks } from './guide-blocks.ts';
import { EDGE_ROOM_MM, guidePicture } from './guide-picture.ts';
import { below, inColumns } from './in-columns.ts';

const COLUMN_GAP_MM = 9;
const SECTION_GAP_MM = 5;
/** The picture of the page: this share of the width of the guide at the most, and of its height. */
const PICTURE_WIDE = 0.62;
const PICTURE_HIGH = 0.56;
const COLUMNS = { portrait: 2, landscape: 3 } as const;

/** At least one page; the last is the one to copy, where there is something to copy. */
export function guidePages(guide: Guide, language: Language = 'en'): readonly Page[] {
  const { spec, code } = guide.sheet;
  const { paper, orientation } = adultPaperOf(spec.page);
  const words = byHandWords(language);
  const activity = activityOf(spec.activity).words[language].name;
  const size = pageSize(paper, orientation);
  const title = `${words.title(activity, spec.step)} (${code})`;
  const further = furtherPlace(guide, language);
  const first = firstPage(guide, language, further.heightMm);
  const pages: (readonly SceneNode[])[] = [first.nodes];
  let rest = first.rest;
  while (rest.length > 0) {
    const filled = inColumns(rest, further.columns);
    pages.push([further.top, ...filled.nodes]);
    rest = filled.rest;
  }
  const isCopied = guide.copied !== undefined || guide.placements.some((each) => each.isCopied);
  return [
    ...pages.map((nodes) => pageIn(language, { ...size, title, nodes })),
    ...(isCopied ? [copyPage(guide, language)] : []),
  ];
}

/** Where the list goes on: what stands above it on each further page, and its columns, all equally high. */
function furtherPlace({ sheet: { spec, code } }: Guide, language: Language) {
  const { paper, orientation } = adultPaperOf(spec.page);
  const area = printArea(paper, orientation);
  const words = `${byHandWords(language).continued} · ${codeIn(language, code)}`;
  const top = paragraph(words, area.width, { colour: QUIET_INK });
  const body = below(area, top.heightMm + SECTION_GAP_MM);
  return {
    top: top.draw(area.left, area.top),
    columns: columnsOf(COLUMNS[orientation], body, COLUMN_GAP_MM),
    heightMm: body.height,
  };
}

/**
 * The head, the picture beside what to lay out, and below them as much of the list as there is room for; nothing of the
 * list is higher than `mostMm`, so that it finds room on a further page.
 */
function firstPage(guide: Guide, language: Language, mostMm: number) {
  const { spec, code } = guide.sheet;
  const { paper, orientation } = adultPaperOf(spec.page);
  const words = byHandWords(language);
  const area = sheetArea(paper, orientation);
  const activity = activityOf(spec.activity).words[language];
  const head = stackBlocks(
    [
      heading(words.title(activity.name, spec.step), area.width),
      paragraph(words.takes(guide.minutes), area.width, { colour: QUIET_INK }),
    ],
    area,
  );
  const body = below(area, head.heightMm + SECTION_GAP_MM);
  const look = lookAt(guide, language, body);
  const beside = {
    ...body,
    left: body.left + look.widthMm + COLUMN_GAP_MM,
    width: body.width - look.widthMm - COLUMN_GAP_MM,
    height: look.heightMm,
  };
  const layOut = stackBlocks(
    [...layOutBlocks(guide, language, beside.width), ...noteBlocks(guide, language, beside.width)],
    beside,
  );
  const lower = below(body, look.heightMm + SECTION_GAP_MM);
  const columns = columnsOf(COLUMNS[orientation], lower, COLUMN_GAP_MM);
  const width = columns[0]?.width ?? area.width;
  const blocks = [
    ...layOut.rest,
    ...stepBlocks(guide, language, width),
    ...answerBlocks(guide, language, width, mostMm),
  ];
  const filled = inColumns(blocks, columns);
  const foot = drawFoot({
    paper,
    orientation,
    code,
    about: activity.name,
    labels: footLabels(language),
    child: childOnSheet(guide.sheet.child),
  });
  return { nodes: [head.group, look.node, layOut.group, ...filled.nodes, foot], rest: filled.rest };
}

function lookAt(guide: Guide, language: Language, body: Area) {
  const { widthMm, heightMm } = guide.page;
  const scale = Math.min(
    (body.width * PICTURE_WIDE - EDGE_ROOM_MM) / widthMm,
    (body.height * PICTURE_HIGH - EDGE_ROOM_MM) / heightMm,
  );
  const size = {
    widthMm: widthMm * scale + EDGE_ROOM_MM,
    heightMm: heightMm * scale + EDGE_ROOM_MM,
  };
  const title = heading(byHandWords(language).howItLooks, size.widthMm, 2);
  const drawn = stackBlocks(
    [title, picture(kept(guidePicture(guide, scale), size.widthMm / 2), size)],
    body,
  );
  return { node: drawn.group, widthMm: size.widthMm, heightMm: drawn.heightMm };
}
