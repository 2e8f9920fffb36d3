// The proof of a task as it now stands: certain, certain with another answer, or not, and what is wrong in words.
import { type Activity, faultIn, type Language, type Task } from '../activities/index.ts';
import { figureName, placeOf } from '../figures/index.ts';
import type { PrintStyle } from '../page/index.ts';
import { type FaultAsked, placesOfFault, placesOfNoAnswer } from './fault-places.ts';
import { type Findings, findingsOf } from './findings.ts';
import { type Ground, languageOf } from './ground.ts';
import { tracedTask } from './places.ts';
import { EDITING_WORDS } from './words.ts';

/** Something to know of the task, and where on the page it shows. */
export interface Problem {
  readonly sentence: string;
  /** Numbers of places; empty: nowhere in particular. */
  readonly places: readonly number[];
}

export interface Verdict {
  /** `changed`: exactly one answer, but no longer the one that it was. */
  readonly state: 'certain' | 'changed' | 'uncertain';
  /** Every answer that was found, in words. */
  readonly answers: readonly string[];
  /** The one answer, where there is exactly one; else `undefined`. */
  readonly answer: unknown;
  readonly problems: readonly Problem[];
}

/**
 * `before` is the task as it was made; `touched` the places of the last change, shown where nothing tells where a fault lies.
 * Nothing but the activity's own solver decides, from the printed facts alone.
 */
export function judge(
  ground: Pick<Ground, 'activity' | 'style'>,
  printed: unknown,
  before: Task,
  touched: readonly number[] = [],
): Verdict {
  const { activity } = ground;
  const language = languageOf(ground);
  const { state, found } = standingOf(activity, printed, before);
  const answers = saidOf(activity, printed, found.answers, language);
  const [answer] = found.answers;
  if (state === 'uncertain') {
    const problems = doubtProblems({ activity, printed, before, touched }, found, language);
    return { state, answers, answer: undefined, problems };
  }
  if (state === 'certain') return { state, answers, answer, problems: [] };
  const now = { printed, answer };
  const problems = [changedProblem(activity, now, before, answers[0] ?? '', language)];
  return { state, answers, answer, problems };
}

/** The state alone, without words: whatever looks through many tasks asks for no more. */
export function stateOf(
  { activity }: Pick<Ground, 'activity'>,
  printed: unknown,
  before: Task,
): Verdict['state'] {
  return standingOf(activity, printed, before).state;
}

function standingOf(activity: Activity, printed: unknown, before: Task) {
  const found = findingsOf(activity, printed);
  const isCertain = found.faults.length === 0 && found.answers.length === 1;
  if (!isCertain) return { found, state: 'uncertain' } as const;
  const key = activity.prove({ printed, answer: before.answer });
  return { found, state: key.proven ? 'certain' : 'changed' } as const;
}

function saidOf(
  activity: Activity,
  printed: unknown,
  answers: readonly unknown[],
  language: Language,
): readonly string[] {
  return answers.map((answer) => activity.words[language].answer(printed, answer));
}

/** Why a task is not certain. */
function doubtProblems(
  asked: FaultAsked,
  { answers, faults }: Findings,
  language: Language,
): readonly Problem[] {
  const words = EDITING_WORDS[language];
  return [
    ...faults.map((fault) => ({
      sentence: words.fault(faultIn(language, fault)),
      places: placesOfFault(asked, fault),
    })),
    ...(answers.length === 0 && faults.length === 0
      ? [{ sentence: words.noAnswer, places: placesOfNoAnswer(asked) }]
      : []),
    ...(answers.length > 1
      ? [severalProblem(asked.activity, asked.printed, answers, language)]
      : []),
  ];
}

/** Why a task is not certain, in sentences of a language; none where it is. */
export function doubtSentences(
  activity: Activity,
  printed: unknown,
  language: Language,
): readonly string[] {
  const found = findingsOf(activity, printed);
  if (found.faults.length === 0 && found.answers.length === 1) return [];
  const asked = { activity, printed, before: { printed, answer: undefined }, touched: [] };
  return doubtProblems(asked, found, language).map(({ sentence }) => sentence);
}

/** Whether the task can be measured, told of, and drawn at its least size; the page may still lack the room. */
export function isDrawable(activity: Activity, task: Task, style: PrintStyle): boolean {
  const { printed } = task;
  try {
    activity.features(printed);
    activity.materials(task);
    activity.decisions(task);
    activity.words.en.describe(printed);
    activity.draw(task, activity.room(printed), style, false);
    return true;
  } catch {
    return false;
  }
}

/** The figures that an answer makes right, by name, and where they stand. */
function rightIn(activity: Activity, task: Task, language: Language) {
  const right = new Map<string, number[]>();
  const decisions = activity.decisions({ ...task, printed: tracedTask(task.printed) });
  for (const { figure, isRight } of decisions.flatMap(({ options }) => options)) {
    const place = placeOf(figure);
    if (!isRight || place === undefined) continue;
    const name = figureName(figure, language);
    right.set(name, [...(right.get(name) ?? []), place]);
  }
  return right;
}

function severalProblem(
  activity: Activity,
  printed: unknown,
  answers: readonly unknown[],
  language: Language,
): Problem {
  const places = answers.map((answer) =>
    [...rightIn(activity, { printed, answer }, language).values()].flat(),
  );
  const inAll = (place: number) => places.every((each) => each.includes(place));
  const differing = [...new Set(places.flat())].filter((place) => !inAll(place));
  const said = saidOf(activity, printed, answers, language);
  const sentence = EDITING_WORDS[language].several(said);
  return { sentence, places: differing.sort((one, other) => one - other) };
}

/** What is right now and was not, and the other way round. */
function changedProblem(
  activity: Activity,
  now: Task,
  before: Task,
  said: string,
  language: Language,
): Problem {
  const [right, was] = [rightIn(activity, now, language), rightIn(activity, before, language)];
  const come = [...right].filter(([name]) => !was.has(name));
  const gone = [...was.keys()].filter((name) => !right.has(name));
  return {
    sentence: EDITING_WORDS[language].changed(
      come.map(([name]) => name),
      gone,
      said,
    ),
    places: come.flatMap(([, places]) => places),
  };
}
