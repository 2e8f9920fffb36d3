// Answers what is asked while a sheet is changed by changing: the proof runs here, so that the screen never waits.
import { activityOf } from '../../activities/index.ts';
import { accept, type Result } from '../../base/index.ts';
import {
  choicesFor,
  doDeed,
  EDITING_WORDS,
  emptyCellsIn,
  factName,
  factsIn,
  type Ground,
  judge,
  listsIn,
  lockedIn,
  lyingTask,
  NO_EDITS,
  offersAt,
  type Place,
  placeName,
  placesIn,
  repairAsked,
  type SheetEdits,
  type Spot,
  shapeOffersAt,
  smallestRepair,
  tracedTask,
  wholesIn,
} from '../../editing/index.ts';
import { type Figure, figureName, sameFigure } from '../../figures/index.ts';
import { difficultyOf, sheetDifficulty } from '../../learner/index.ts';
import { drawFigure, type PrintStyle } from '../../page/index.ts';
import { svgOf } from '../../press/index.ts';
import { makeSheet, type Sheet, sheetPage, styleOf, valuesOf } from '../../sheets/index.ts';
import type { Question } from '../asking/talk.ts';
import { changedWith, editsOf } from '../making/changed-sheets.ts';
import { keptAsMade, sheetIn } from '../making/kept-pack.ts';
import { sheetsOf } from '../making/pack-of.ts';
import { replyOf } from '../making/reply.ts';
import { hardnessOf } from '../making/show.ts';
import { languageNow } from '../speaking/language-now.ts';
import type {
  ChangeOffers,
  ChangeTalk,
  Held,
  HeldTask,
  SheetOfPack,
  Taken,
  UnderChange,
} from './change-talk.ts';

/** Side of the picture of a figure to choose, in mm. */
const PICTURE_MM = 12;

export function answerChanges(
  question: Question<ChangeTalk>,
): ChangeTalk[keyof ChangeTalk]['reply'] {
  const { activity } = question.entries;
  switch (question.kind) {
    case 'take':
      return replyOf(taken(question), activity);
    case 'hold':
      return replyOf(held(question), activity);
    case 'deed': {
      const base = baseSheet(question);
      if (!base.ok) return replyOf<SheetEdits>(base, activity);
      const done = doDeed(groundOf(base.value), base.value.tasks, question.work, question.deed);
      // What has no room on the page, or in the code, is not done.
      const made = done.ok ? makeSheet({ ...base.value.spec, edits: done.value.edits }) : done;
      return made.ok ? replyOf<SheetEdits>(done, activity) : replyOf<SheetEdits>(made, activity);
    }
    case 'offers':
      return replyOf(offered(question, question.at), activity);
    case 'mend':
      return replyOf(mended(question, question.task), activity);
  }
}

/** The sheets as they were made, at least up to the one that is changed. */
interface Bases {
  readonly sheets: readonly Sheet[];
  /** Of the one that is changed, 1 upward. */
  readonly number: number;
  readonly base: Sheet;
}

function basesOf(asked: SheetOfPack): Result<Bases> {
  const all = sheetsOf(asked);
  if (!all.ok) return all;
  const number = Math.min(asked.sheet, all.value);
  const pack = keptAsMade(asked, number);
  if (!pack.ok) return pack;
  return accept({ sheets: pack.value.sheets, number, base: sheetIn(pack.value, number) });
}

function baseSheet(asked: SheetOfPack): Result<Sheet> {
  const bases = basesOf(asked);
  return bases.ok ? accept(bases.value.base) : bases;
}

function groundOf({ spec }: Sheet): Ground {
  const values = valuesOf(spec);
  if (!values.ok) throw new Error(`sheet: ${JSON.stringify(values.refusals)}`);
  return {
    activity: activityOf(spec.activity),
    values: values.value,
    style: styleOf(spec, languageNow()),
  };
}

function taken(asked: SheetOfPack): Result<Taken> {
  const bases = basesOf(asked);
  if (!bases.ok) return bases;
  const { sheets, number, base } = bases.value;
  const edits = editsOf(sheets, asked.entries.changed, number);
  return accept({ made: base.code, work: { ...NO_EDITS, edits } });
}

function held({ work, ...asked }: UnderChange): Result<Held> {
  const bases = basesOf(asked);
  if (!bases.ok) return bases;
  const { sheets, number, base } = bases.value;
  const made = makeSheet({ ...base.spec, edits: work.edits });
  if (!made.ok) return made;
  const { code, spec, tasks } = made.value;
  const ground = groundOf(base);
  const traced = tasks.map((task) => ({ ...task, printed: tracedTask(task.printed) }));
  const named = base.child === undefined ? made.value : { ...made.value, child: base.child };
  return accept({
    svg: svgOf(sheetPage({ ...named, tasks: traced }, languageNow()), { idPrefix: 'changing' }),
    code,
    changed: changedWith(sheets, asked.entries.changed, number, spec.edits && code),
    hardness: hardnessOf(made.value),
    logits: { before: logitsOf(ground, base), now: logitsOf(ground, made.value) },
    tasks: base.tasks.map((_, task) => heldTask(ground, base, work, task)),
  });
}

function logitsOf({ activity }: Ground, { tasks }: Sheet): number {
  return sheetDifficulty(tasks.map(({ printed }) => difficultyOf(activity, printed))).logits;
}

function heldTask(ground: Ground, base: Sheet, work: SheetEdits, task: number): HeldTask {
  const { before, printed } = lyingTask(ground, base.tasks, work, task);
  const touched = work.last?.task === task ? work.last.places : [];
  const { state, answers, problems } = judge(ground, printed, before, touched);
  const locked = lockedIn(work, task);
  const named = placesIn(printed).map(({ path, figure }, place) => ({
    place,
    name: placeNameOf({ path, figure }),
    isLocked: locked.includes(place),
    isEmpty: figure === null,
  }));
  return {
    state,
    isChanged: work.edits.some((edit) => edit.task === task),
    answers,
    problems,
    places: named.filter(({ isEmpty }) => !isEmpty),
    empty: named.filter(({ isEmpty }) => isEmpty),
    wholes: wholesIn(printed).map((whole) => ({
      ...whole,
      name: placeName(whole, languageNow()),
      isLocked: whole.places.every((place) => locked.includes(place)),
    })),
    cells: emptyCellsIn(printed),
  };
}

function placeNameOf({ path, figure }: Place): string {
  const language = languageNow();
  const place = placeName({ path }, language);
  if (figure === null) return place;
  return EDITING_WORDS[language].standing(place, figureName(figure, language));
}

function offered({ work, ...asked }: UnderChange, at: Spot): Result<ChangeOffers> {
  const base = baseSheet(asked);
  if (!base.ok) return base;
  const ground = groundOf(base.value);
  const { before, printed } = lyingTask(ground, base.value.tasks, work, at.task);
  const { path, figure } = placesIn(printed)[at.place] ?? { path: [], figure: null };
  const isFit = (other: Figure | null) => {
    const deed = { kind: 'become', at, figure: other } as const;
    return doDeed(ground, base.value.tasks, work, deed).ok;
  };
  const around = path.slice(0, -1);
  const isBeside = (other: readonly (string | number)[]) =>
    around.length > 1 && around.every((step, index) => step === other[index]);
  return accept({
    name: placeNameOf({ path, figure }),
    groups: offersAt(ground, printed, at.place).map(({ attribute, label, offers }) => ({
      attribute,
      label,
      offers: offers.map((offer, index) => ({
        ...offer,
        svg: pictureOf(offer.figure, ground.style, `${attribute}-${index}`),
      })),
    })),
    put: figure ? [] : putsFor(ground, printed).filter((offer) => isFit(offer.figure)),
    canLeave: figure !== null && isFit(null),
    facts: factsIn(printed).flatMap(({ path: own, value }, fact) =>
      typeof value === 'string' && isBeside(own)
        ? [
            {
              fact,
              value,
              choices: choicesFor(value).map((choice) => ({
                value: choice,
                label: factName(choice, languageNow()),
              })),
            },
          ]
        : [],
    ),
    shapes: shapeOffersAt(ground, printed, before, at.place).map(({ label, change }) => ({
      label,
      change,
      depth: listsIn(printed)[change.list]?.path.length ?? 0,
    })),
  });
}

/** The different figures of the task. */
function putsFor({ style }: Ground, printed: unknown): ChangeOffers['put'] {
  const shown = placesIn(printed).flatMap(({ figure }) => figure ?? []);
  const kinds = shown.filter(
    (figure, index) => !shown.slice(0, index).some((other) => sameFigure(other, figure)),
  );
  return kinds.map((figure, index) => ({
    label: figureName(figure, languageNow()),
    figure,
    isNow: false,
    svg: pictureOf(figure, style, `put-${index}`),
  }));
}

function pictureOf(figure: Figure, style: PrintStyle, idPrefix: string): string {
  const middle = PICTURE_MM / 2;
  const node = drawFigure(figure, middle, middle, PICTURE_MM, style);
  const page = { widthMm: PICTURE_MM, heightMm: PICTURE_MM, title: '', nodes: [node] };
  return svgOf(page, { idPrefix: `offer-${idPrefix}` });
}

function mended({ work, ...asked }: UnderChange, task: number): Result<string> {
  const base = baseSheet(asked);
  if (!base.ok) return base;
  const ground = groundOf(base.value);
  const { before, printed } = lyingTask(ground, base.value.tasks, work, task);
  const repair = smallestRepair(ground, printed, { before, ...repairAsked(work, task) });
  return accept(repair?.sentence ?? '');
}
