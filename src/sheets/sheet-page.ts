// The page that the child gets: the tasks of a sheet, and one quiet foot.
import { activityOf, type Language, type Task } from '../activities/index.ts';
import { moveBy } from '../base/index.ts';
import {
  type Area,
  drawFoot,
  type Group,
  group,
  type Page,
  pageSize,
  printArea,
  sheetArea,
} from '../page/index.ts';
import { arrangeTasks } from './arrange.ts';
import { footQuestion } from './foot-question.ts';
import { pageWords } from './page-catalogue.ts';
import type { Sheet } from './sheet.ts';
import { styleOf } from './sheet-spec.ts';
import { taskRules } from './task-rules.ts';

/** The sheet as it is printed. */
export function sheetPage(sheet: Sheet, language: Language = 'en'): Page {
  const { spec, code } = sheet;
  const { paper, orientation } = spec.page;
  const activity = activityOf(spec.activity).words[language];
  const words = pageWords(language);
  const about = words.about(activity.name, spec.step);
  const say = activity.say(sheet.tasks[0]?.printed);
  const foot = drawFoot({
    paper,
    orientation,
    code,
    question: footQuestion(say, about, printArea(paper, orientation).width),
    about,
    labels: words.foot,
    child: sheet.child?.name,
  });
  return {
    ...pageSize(paper, orientation),
    title: words.sheetTitle(activity.name, spec.step, code),
    nodes: [...taskGroups(sheet, false, language), foot],
  };
}

/** The tasks in their places on the page, with lines between them; `withAnswers` draws the answers in. */
export function taskGroups(
  sheet: Sheet,
  withAnswers: boolean,
  language: Language = 'en',
): readonly Group[] {
  const { activity, page } = sheet.spec;
  const area = sheetArea(page.paper, page.orientation);
  const rooms = sheet.tasks.map((task) => activityOf(activity).room(task.printed));
  const places = arrangeTasks(rooms, area);
  if (!places) throw new Error(`sheet ${sheet.code}: its tasks have no room on its page`);
  const tasks = sheet.tasks.flatMap((task, index) => {
    const place = places[index];
    return place ? [drawTask(sheet, task, place, withAnswers, language)] : [];
  });
  return [...tasks, taskRules(places, area)];
}

function drawTask(
  { spec }: Sheet,
  task: Task,
  place: Area,
  withAnswers: boolean,
  language: Language,
): Group {
  const activity = activityOf(spec.activity);
  const size = { widthMm: place.width, heightMm: place.height };
  const drawn = activity.draw(task, size, styleOf(spec), withAnswers);
  const words = activity.words[language];
  const alt = withAnswers
    ? words.answer(task.printed, task.answer)
    : (drawn.alt ?? words.describe(task.printed));
  return {
    ...group('task-place', [{ ...drawn, alt }]),
    transform: moveBy(place.left, place.top),
  };
}
