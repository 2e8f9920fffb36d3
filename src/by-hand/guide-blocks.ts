// What a guide says, as blocks that are measured before they have a place.
import { activityOf, type Language } from '../activities/index.ts';
import { moveBy, rectanglePath } from '../base/index.ts';
import {
  type Block,
  bullets,
  FINE_MM,
  group,
  heading,
  INK,
  paragraph,
  QUIET_INK,
  stroked,
  together,
} from '../page/index.ts';
import { packMaterials } from '../sheets/index.ts';
import { byHandWords } from './catalogue.ts';
import type { Guide } from './guide.ts';
import type { Pen, Placement } from './parts.ts';

const EM_MM = 3.3;
const TICK_MM = 3;
const INDENT_MM = 5;
const TICK_DOWN_MM = 1;
const ROW_BEFORE_MM = 0.8;
const SECTION_BEFORE_MM = 4;

/** A line of the list with a box to tick before it. */
export function tickRow(words: string, widthMm: number): Block {
  const said = paragraph(words, widthMm - INDENT_MM, { emMm: EM_MM });
  const box = stroked(rectanglePath(0, 0, TICK_MM, TICK_MM), { colour: INK, widthMm: FINE_MM });
  return {
    heightMm: said.heightMm,
    beforeMm: ROW_BEFORE_MM,
    draw: (left, top) =>
      group('tick-row', [
        { ...group('tick', [box]), transform: moveBy(left, top + TICK_DOWN_MM) },
        said.draw(left + INDENT_MM, top),
      ]),
  };
}

/** A heading that no end of a column parts from its first row. */
function section(title: string, rows: readonly Block[], widthMm: number): readonly Block[] {
  const [first, ...rest] = rows;
  if (!first) return [];
  return [together([heading(title, widthMm, 2), first], SECTION_BEFORE_MM), ...rest];
}

/** What to fetch before one begins, stickers counted by colour and size. */
export function layOutBlocks(guide: Guide, language: Language, widthMm: number): readonly Block[] {
  const words = byHandWords(language);
  const { paper, orientation } = guide.sheet.spec.page;
  const stickers = runsOf(guide.placements.filter(({ isSticker }) => isSticker));
  const pens = pensOf(guide);
  const rows = [
    words.paper(paper, orientation === 'landscape'),
    ...(guide.copied ? [] : [words.ruler]),
    ...stickers.map((run) => words.stickers(run.length, penIn(run), run[0]?.widthMm ?? 0)),
    ...(pens.length > 0 ? [words.pens(pens)] : []),
  ];
  const child = childThings(guide, language);
  return [
    ...section(
      words.layOut,
      rows.map((row) => tickRow(row, widthMm)),
      widthMm,
    ),
    ...(child.length > 0
      ? [paragraph(words.forTheChild(child), widthMm, { emMm: EM_MM, colour: QUIET_INK })]
      : []),
  ];
}

function pensOf({ placements, boxes, lines }: Guide): readonly Pen[] {
  const pens = placements.filter(({ isSticker }) => !isSticker).map(({ colour }) => colour);
  const ruled: readonly Pen[] = boxes.length + lines.length > 0 ? ['black'] : [];
  return [...new Set([...pens, ...ruled])];
}

function childThings({ sheet }: Guide, language: Language): readonly string[] {
  const words = byHandWords(language);
  const { stickers, crayons, tools } = packMaterials([sheet]);
  return [
    ...stickers.map(({ count, colour, diameterMm }) =>
      words.childStickers(count, colour, diameterMm),
    ),
    ...(crayons.length > 0 ? [words.childCrayons(crayons)] : []),
    ...tools.map((tool) => words.childTools[tool]),
  ];
}

/** Fold, rule, stick on, draw, write the code: each with its boxes to tick. */
export function stepBlocks(guide: Guide, language: Language, widthMm: number): readonly Block[] {
  const words = byHandWords(language);
  const { folds, boxes, lines, copied } = guide;
  const rows = (all: readonly string[]) => all.map((each) => tickRow(each, widthMm));
  const ruled = copied ? [] : [...boxes.map(words.box), ...lines.map(words.line)];
  return [
    ...(folds.length > 0 ? section(words.foldFirst, rows([words.fold(folds)]), widthMm) : []),
    ...section(words.rule, rows(ruled), widthMm),
    ...runsOf(guide.placements).flatMap((run) =>
      section(
        titleOf(run, language),
        rows(run.map((each) => rowOf(each, guide, language))),
        widthMm,
      ),
    ),
    ...section(words.last, rows([words.codeToWrite(guide.sheet.code)]), widthMm),
  ];
}

/** Placements that are made together: stickers of one colour and size, or all of one pen. */
function runsOf(placements: readonly Placement[]): readonly (readonly Placement[])[] {
  const keyOf = ({ isSticker, colour, widthMm }: Placement) =>
    `${isSticker} ${colour} ${isSticker ? widthMm : ''}`;
  const runs = new Map<string, Placement[]>();
  for (const placement of placements) {
    const key = keyOf(placement);
    runs.set(key, [...(runs.get(key) ?? []), placement]);
  }
  return [...runs.values()];
}

function penIn(run: readonly Placement[]): Pen {
  return run[0]?.colour ?? 'black';
}

function titleOf(run: readonly Placement[], language: Language): string {
  const words = byHandWords(language);
  const [first] = run;
  return first?.isSticker
    ? words.stickerHeading(run.length, first.colour, first.widthMm)
    : words.penHeading(run.length, penIn(run));
}

function rowOf(placement: Placement, guide: Guide, language: Language): string {
  return `${placement.number}. ${placeOf(placement, guide, language)}`;
}

function placeOf(placement: Placement, { copied, folds }: Guide, language: Language): string {
  const words = byHandWords(language);
  if (copied) return words.copiedThing(placement);
  const isFolded = folds.length > 0;
  return placement.isSticker
    ? words.stickerPlace(placement, isFolded)
    : words.drawnPlace(placement, isFolded);
}

/** The answers, small, at the very end: in one list, unless that is higher than `mostMm`. */
export function answerBlocks(
  { sheet }: Guide,
  language: Language,
  widthMm: number,
  mostMm: number,
): readonly Block[] {
  const activity = activityOf(sheet.spec.activity);
  const answers = sheet.tasks.map(({ printed, answer }) =>
    activity.words[language].answer(printed, answer),
  );
  const { answers: title } = byHandWords(language);
  const listed = (some: readonly string[]) => bullets(some, widthMm, EM_MM);
  const whole = section(title, [listed(answers)], widthMm);
  const isTooHigh = whole.some(({ heightMm }) => heightMm > mostMm);
  return isTooHigh
    ? section(
        title,
        answers.map((answer) => listed([answer])),
        widthMm,
      )
    : whole;
}

/** Why something is copied, where it is; and how the numbers are to be read. */
export function noteBlocks(guide: Guide, language: Language, widthMm: number): readonly Block[] {
  const words = byHandWords(language);
  const copied = guide.placements.filter(({ isCopied }) => isCopied).length;
  const notes = [
    ...(guide.copied ? [words.whyCopied(guide.copied)] : [words.howToRead]),
    ...(!guide.copied && copied > 0 ? [words.someCopied(copied)] : []),
  ];
  return notes.map((note) => paragraph(note, widthMm, { emMm: EM_MM, colour: QUIET_INK }));
}
