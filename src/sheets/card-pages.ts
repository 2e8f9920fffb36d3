// Every task of a sheet as a card of its own: equal cards with room between them, nothing on their backs.
import { activityOf, type Language } from '../activities/index.ts';
import { moveBy, scaleBy } from '../base/index.ts';
import {
  type Area,
  type Group,
  group,
  inkArea,
  kept,
  type Orientation,
  type Page,
  placeScaled,
} from '../page/index.ts';
import { cardLabel, LABEL_MM, PAD_MM } from './card-parts.ts';
import {
  CUT_GAP_MM,
  type CutPageChoice,
  cutArea,
  cutLine,
  cutPage,
  gridInMiddle,
  gridRoom,
} from './cut-page.ts';
import { pageWords } from './page-catalogue.ts';
import { placedTasks } from './placed-tasks.ts';
import type { Sheet } from './sheet.ts';
import { styleOf } from './sheet-spec.ts';

/** A task as it is drawn, and where its ink ends. */
interface DrawnTask {
  readonly drawing: Group;
  readonly ink: Area;
}

/** How the cards of a sheet come out. */
interface CardPlan {
  readonly page: CutPageChoice;
  readonly tasks: readonly DrawnTask[];
  readonly widthMm: number;
  readonly heightMm: number;
}

/** In the order of the tasks; each card tells its sheet's code and its number. */
export function cardPages(sheet: Sheet, language: Language = 'en'): readonly Page[] {
  const plan = cardPlan(sheet, language);
  const area = cutArea(plan.page, 0);
  const { columns, rows } = gridRoom(plan, area, CUT_GAP_MM);
  const perPage = Math.max(1, columns * rows);
  const words = pageWords(language).cut;
  const pages = Math.ceil(plan.tasks.length / perPage);
  return Array.from({ length: pages }, (_, index) => {
    const from = index * perPage;
    const tasks = plan.tasks.slice(from, from + perPage);
    const places = gridInMiddle(tasks.length, plan, area, CUT_GAP_MM);
    return cutPage({
      language,
      page: plan.page,
      title: words.cardsTitle(sheet.code),
      foot: [words.cards(sheet.code), words.page(index + 1, pages)],
      nodes: tasks.flatMap((task, at) => {
        const place = places[at];
        return place ? [drawCard(task, place, `${sheet.code} · ${from + at + 1}`)] : [];
      }),
    });
  });
}

function drawCard({ drawing, ink }: DrawnTask, place: Area, label: string): Group {
  const inside = {
    left: place.left + PAD_MM,
    top: place.top + PAD_MM,
    width: place.width - 2 * PAD_MM,
    height: place.height - PAD_MM - LABEL_MM,
  };
  // From the ink's own corner, so that it stands in the middle.
  const inked = kept(group('card-task', [drawing]), ink.left + ink.width / 2);
  const fromInk = { ...inked, transform: moveBy(-ink.left, -ink.top) };
  const task = placeScaled(fromInk, { widthMm: ink.width, heightMm: ink.height }, inside);
  return group('card', [cutLine(place), task, cardLabel(label, place)]);
}

/**
 * The tasks just as they stand on the sheet where a page has room for them with what goes round them, be it turned;
 * else at their least size.
 */
function cardPlan(sheet: Sheet, language: Language): CardPlan {
  const plans = [drawnAsOnSheet(sheet, language), drawnAtLeast(sheet, language)].flatMap((tasks) =>
    pagesFor(sheet).map((page): CardPlan => ({ page, tasks, ...cardSize(tasks) })),
  );
  const fitting = plans.find((plan) => {
    const { columns, rows } = gridRoom(plan, cutArea(plan.page, 0), CUT_GAP_MM);
    return columns > 0 && rows > 0;
  });
  return fitting ?? fullPage(plans.at(-2) ?? plans[0]);
}

/** The page of the sheet, and the same paper turned. */
function pagesFor({ spec }: Sheet): readonly CutPageChoice[] {
  const turned: Orientation = spec.page.orientation === 'portrait' ? 'landscape' : 'portrait';
  return [spec.page, { ...spec.page, orientation: turned }];
}

function cardSize(tasks: readonly DrawnTask[]) {
  return {
    widthMm: Math.max(...tasks.map(({ ink }) => ink.width)) + 2 * PAD_MM,
    heightMm: Math.max(...tasks.map(({ ink }) => ink.height)) + PAD_MM + LABEL_MM,
  };
}

/** One card as large as the page allows; what stands on it is made smaller. */
function fullPage(plan: CardPlan | undefined): CardPlan {
  if (!plan) throw new Error('cards: expected a sheet with tasks');
  const { width, height } = cutArea(plan.page, 0);
  return {
    ...plan,
    widthMm: Math.min(width, plan.widthMm),
    heightMm: Math.min(height, plan.heightMm),
  };
}

function drawnAsOnSheet(sheet: Sheet, language: Language): readonly DrawnTask[] {
  return placedTasks(sheet, language).map(({ task, size, times }) => {
    const { drawing, ink } = drawnTask(sheet, task, size, language);
    return {
      drawing: times === 1 ? drawing : { ...drawing, transform: scaleBy(times) },
      ink: {
        left: times * ink.left,
        top: times * ink.top,
        width: times * ink.width,
        height: times * ink.height,
      },
    };
  });
}

function drawnAtLeast(sheet: Sheet, language: Language): readonly DrawnTask[] {
  const { room } = activityOf(sheet.spec.activity);
  const style = styleOf(sheet.spec, language);
  return sheet.tasks.map((task) => drawnTask(sheet, task, room(task.printed, style), language));
}

function drawnTask(
  { spec }: Sheet,
  task: Sheet['tasks'][number],
  size: { readonly widthMm: number; readonly heightMm: number },
  language: Language,
): DrawnTask {
  const activity = activityOf(spec.activity);
  const drawn = activity.draw(task, size, styleOf(spec, language), false);
  const alt = drawn.alt ?? activity.words[language].describe(task.printed);
  const ink = inkArea(drawn) ?? { left: 0, top: 0, width: size.widthMm, height: size.heightMm };
  return { drawing: { ...drawn, alt }, ink };
}
