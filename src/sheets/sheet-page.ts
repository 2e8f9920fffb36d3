// The page that the child gets: the tasks of a sheet, and one quiet foot.
import { activityOf, type Language, type Task } from '../activities/index.ts';
import { compose, moveBy, scaleBy } from '../base/index.ts';
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
import { enlargedRooms, enlargementIn } from './large.ts';
import { pageWords } from './page-catalogue.ts';
import type { Sheet } from './sheet.ts';
import { styleOf } from './sheet-spec.ts';
import { taskRules } from './task-rules.ts';

/** The sheet as it is printed. */
export function sheetPage(sheet: Sheet, language: Language = 'en'): Page {
  const { spec, code } = sheet;
  const { paper, orientation, margin } = spec.page;
  const activity = activityOf(spec.activity).words[language];
  const words = pageWords(language);
  const kind = words.about(activity.name, spec.step);
  const about = spec.edits === undefined ? kind : `${kind} · ${words.changedByHand}`;
  const say = activity.say(sheet.tasks[0]?.printed);
  const foot = drawFoot({
    paper,
    orientation,
    margin,
    code,
    question: footQuestion(say, about, printArea(paper, orientation, margin).width),
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
  const { activity, page, size } = sheet.spec;
  const area = sheetArea(page.paper, page.orientation, page.margin);
  const rooms = sheet.tasks.map((task) => activityOf(activity).room(task.printed));
  const places = arrangeTasks(enlargedRooms(rooms, size), area);
  if (!places) throw new Error(`sheet ${sheet.code}: its tasks have no room on its page`);
  const times = enlargementIn(rooms, places, size);
  const tasks = sheet.tasks.flatMap((task, index) => {
    const place = places[index];
    return place
      ? [
          drawTask(sheet, task, {
            place,
            times,
            withAnswers: withAnswers && !isInDoubt(sheet, index),
            language,
          }),
        ]
      : [];
  });
  return [...tasks, taskRules(places, area)];
}

/** Whether a person changed the task so that there is no one answer to draw in. */
function isInDoubt({ doubts = [] }: Sheet, task: number): boolean {
  return doubts.some((doubt) => doubt.task === task);
}

interface TaskDrawing {
  readonly place: Area;
  /** How many times larger than usual. */
  readonly times: number;
  readonly withAnswers: boolean;
  readonly language: Language;
}

function drawTask(
  { spec }: Sheet,
  task: Task,
  { place, times, withAnswers, language }: TaskDrawing,
): Group {
  const activity = activityOf(spec.activity);
  const size = { widthMm: place.width / times, heightMm: place.height / times };
  const drawn = activity.draw(task, size, styleOf(spec), withAnswers);
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
