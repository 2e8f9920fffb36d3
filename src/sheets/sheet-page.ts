// The page that the child gets: the tasks of a sheet, and one quiet foot.
import { activityOf, type Language } from '../activities/index.ts';
import { compose, moveBy, scaleBy } from '../base/index.ts';
import {
  drawFoot,
  type Group,
  group,
  type Ink,
  nodesIn,
  type Page,
  pageSize,
  printArea,
  sheetArea,
} from '../page/index.ts';
import { childOnSheet } from './child-on-sheet.ts';
import { isTooLongToPrint, shortCode } from './code-characters.ts';
import { footQuestion } from './foot-question.ts';
import { pageWords } from './page-catalogue.ts';
import { type PlacedTask, placedTasks } from './placed-tasks.ts';
import type { Sheet } from './sheet.ts';
import { styleOf } from './sheet-spec.ts';
import { taskRules } from './task-rules.ts';

/** The sheet as it is printed. */
export function sheetPage(sheet: Sheet, language: Language = 'en'): Page {
  const { spec, code } = sheet;
  const { paper, orientation, margin } = spec.page;
  const activity = activityOf(spec.activity).words[language];
  const words = pageWords(language);
  const isChanged = spec.edits !== undefined;
  const isTooLong = isTooLongToPrint(code);
  const about = (isChanged ? words.aboutChanged : words.about)(activity.name, spec.step);
  const say = activity.say(sheet.tasks[0]?.printed);
  const foot = drawFoot({
    paper,
    orientation,
    margin,
    code: isTooLong ? shortCode(code) : code,
    inFile: isTooLong ? words.inFile : undefined,
    question: footQuestion(say, about, printArea(paper, orientation, margin).width),
    about,
    labels: words.foot,
    child: childOnSheet(sheet.child),
  });
  const size = pageSize(paper, orientation);
  return {
    ...size,
    title: words.sheetTitle(activity.name, spec.step, shortCode(code)),
    nodes: [...taskGroups(sheet, false, language), ...nodesIn(language, [foot], size.widthMm)],
  };
}

/** The sheet as it is printed in full and to save ink, whichever of the two it is for. */
export function pagesInInks(sheet: Sheet, language: Language = 'en'): Readonly<Record<Ink, Page>> {
  const { ink: _ink, ...full } = sheet.spec;
  return {
    full: sheetPage({ ...sheet, spec: full }, language),
    saving: sheetPage({ ...sheet, spec: { ...full, ink: 'saving' } }, language),
  };
}

/** The tasks in their places on the page, with lines between them; `withAnswers` draws the answers in. */
export function taskGroups(
  sheet: Sheet,
  withAnswers: boolean,
  language: Language = 'en',
): readonly Group[] {
  const { page } = sheet.spec;
  const placed = placedTasks(sheet, language);
  const tasks = placed.map((each, index) =>
    drawTask(sheet, each, withAnswers && !isInDoubt(sheet, index), language),
  );
  const places = placed.map(({ place }) => place);
  const rules = taskRules(places, sheetArea(page.paper, page.orientation, page.margin));
  const { widthMm } = pageSize(page.paper, page.orientation);
  return nodesIn(language, [...tasks, rules], widthMm);
}

/** Whether a person changed the task so that there is no one answer to draw in. */
function isInDoubt({ doubts = [] }: Sheet, task: number): boolean {
  return doubts.some((doubt) => doubt.task === task);
}

function drawTask(
  { spec }: Sheet,
  { task, place, size, times }: PlacedTask,
  withAnswers: boolean,
  language: Language,
): Group {
  const activity = activityOf(spec.activity);
  const drawn = activity.draw(task, size, styleOf(spec, language), withAnswers);
  const words = activity.words[language];
  const alt = withAnswers
    ? words.answer(task.printed, task.answer)
    : (drawn.alt ?? words.describe(task.printed));
  return {
    ...group('task-place', [{ ...drawn, alt }]),
    transform:
      times === 1
        ? moveBy(place.left, place.top)
        : compose(moveBy(place.left, place.top), scaleBy(times)),
  };
}
