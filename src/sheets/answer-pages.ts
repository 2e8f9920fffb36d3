// Answer pages: several sheets to a page, made smaller, each with its code and its answers drawn in.
import { activityOf, type Language } from '../activities/index.ts';
import { compose, moveBy, rectanglePath, scaleBy } from '../base/index.ts';
import {
  type Area,
  centredIn,
  FAINT_INK,
  FINE_MM,
  fitText,
  type Group,
  gridPlaces,
  group,
  heading,
  INK,
  insetArea,
  isolated,
  kept,
  type Page,
  type PageChoice,
  pageIn,
  pageSize,
  printArea,
  sheetArea,
  stroked,
  text,
  textWidthMm,
} from '../page/index.ts';
import { childOnSheet } from './child-on-sheet.ts';
import { shortCode } from './code-characters.ts';
import { pageWords } from './page-catalogue.ts';
import type { Sheet } from './sheet.ts';
import { taskGroups } from './sheet-page.ts';
import { adultPaperOf } from './sheet-spec.ts';

const COLUMNS = 2;
/** Rows of boxes about as high and wide as the sheets; of sheets that lie, as many again on a page that stands. */
const ROWS = { alike: 2, lying: 4 } as const;
const GAP_MM = 8;
const TITLE_GAP_MM = 3;
const LABEL_MM = 6;
const LABEL_EM_MM = 3.3;
const LABEL_GAP_MM = 3;
const FRAME_INSET_MM = 3;

/** The answers of all sheets in order; sheets of different pages never share an answer page. */
export function* answerPages(sheets: readonly Sheet[], language: Language = 'en'): Iterable<Page> {
  const runs = runsOf(sheets);
  for (const [index, run] of runs.entries())
    yield answerPage(run, index + 1, runs.length, language);
}

interface Run {
  readonly page: PageChoice;
  readonly sheets: Sheet[];
  /** Number of the first of them in the pack, from 1. */
  readonly from: number;
}

function runsOf(sheets: readonly Sheet[]): readonly Run[] {
  const runs: Run[] = [];
  for (const [index, sheet] of sheets.entries()) {
    const last = runs[runs.length - 1];
    const { page } = sheet.spec;
    const isLike = last?.page.paper === page.paper && last.page.orientation === page.orientation;
    if (last && isLike && last.sheets.length < mostOnAnswers(page)) last.sheets.push(sheet);
    else runs.push({ page, sheets: [sheet], from: index + 1 });
  }
  return runs;
}

function mostOnAnswers(page: PageChoice): number {
  const isAlike = adultPaperOf(page).orientation === page.orientation;
  return COLUMNS * (isAlike || page.orientation === 'portrait' ? ROWS.alike : ROWS.lying);
}

function answerPage(run: Run, number: number, of: number, language: Language): Page {
  const { paper, orientation } = adultPaperOf(run.page);
  const area = printArea(paper, orientation);
  const words = pageWords(language).answersTitle(number, of);
  const title = heading(words, area.width, 2);
  const downMm = title.heightMm + TITLE_GAP_MM;
  const body = { ...area, top: area.top + downMm, height: area.height - downMm };
  const places = gridPlaces(mostOnAnswers(run.page), COLUMNS, body, GAP_MM);
  const smalls = run.sheets.map((sheet, index) =>
    smallSheet(sheet, run.from + index, placeAt(places, index), language),
  );
  return pageIn(language, {
    ...pageSize(paper, orientation),
    title: words,
    nodes: [title.draw(area.left, area.top), ...smalls],
  });
}

function placeAt(places: readonly Area[], index: number): Area {
  const place = places[index];
  if (!place) throw new Error(`answer page: no place for sheet ${index + 1} of it`);
  return place;
}

/** A label with number, activity, step and code; below it the tasks in a thin frame. */
function smallSheet(sheet: Sheet, number: number, place: Area, language: Language): Group {
  const frame = { ...place, top: place.top + LABEL_MM, height: place.height - LABEL_MM };
  const inside = insetArea(frame, FRAME_INSET_MM);
  const { paper, orientation, margin } = sheet.spec.page;
  const area = sheetArea(paper, orientation, margin);
  const scale = Math.min(inside.width / area.width, inside.height / area.height);
  const fitted = centredIn(inside, area.width * scale, area.height * scale);
  const toPlace = compose(
    moveBy(fitted.left, fitted.top),
    compose(scaleBy(scale), moveBy(-area.left, -area.top)),
  );
  const outline = rectanglePath(frame.left, frame.top, frame.width, frame.height, 2);
  // Already as they stand on their page, on which margins are alike at both sides.
  const answers = group('answers', taskGroups(sheet, true, language));
  return group('answer-sheet', [
    label(sheet, number, place, language),
    stroked(outline, { colour: FAINT_INK, widthMm: FINE_MM }),
    { ...kept(answers, area.left + area.width / 2), transform: toPlace },
  ]);
}

const BEHIND_NAME = ' · ';

function label(
  { spec, code, child }: Sheet,
  number: number,
  place: Area,
  language: Language,
): Group {
  const baseline = place.top + LABEL_EM_MM;
  const shown = shortCode(code);
  const activity = activityOf(spec.activity).words[language].name;
  const known = childOnSheet(child);
  const about = pageWords(language).answerLabel(number, activity, spec.step);
  const room = place.width - textWidthMm(shown, LABEL_EM_MM) - LABEL_GAP_MM;
  const name = fitText(known, room / 2 - textWidthMm(BEHIND_NAME, LABEL_EM_MM), LABEL_EM_MM);
  const whose = name === '' ? '' : `${isolated(name)}${BEHIND_NAME}`;
  const whoseMm = whose === '' ? 0 : textWidthMm(whose, LABEL_EM_MM);
  return group('answer-label', [
    ...(whose === '' ? [] : [text(whose, place.left, baseline, LABEL_EM_MM, { direction: 'ltr' })]),
    text(
      fitText(about, room - whoseMm, LABEL_EM_MM, 'bold'),
      place.left + whoseMm,
      baseline,
      LABEL_EM_MM,
      {
        weight: 'bold',
      },
    ),
    text(shown, place.left + place.width, baseline, LABEL_EM_MM, { anchor: 'end', colour: INK }),
  ]);
}
