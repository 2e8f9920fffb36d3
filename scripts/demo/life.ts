// An invented child's weeks: what is planned for it, what it does of that, and what the adult writes down.
import type { Skill } from '../../src/activities/index.ts';
import { MAX_SEED, type Random, randomFrom } from '../../src/base/index.ts';
import { demoWords } from '../../src/plan/demo/demo-words.ts';
import { entriesOf } from '../../src/plan/demo/entries.ts';
import { type DemoChild, type DemoSheet, lettersOf } from '../../src/plan/demo/rows.ts';
import {
  addDays,
  type Known,
  knownOf,
  type Planner,
  planToday,
  planWeek,
  type SheetFacts,
  type Suggestion,
} from '../../src/plan/index.ts';
import { type Day, type PlannedSheet, viewOf } from '../../src/records/index.ts';
import { DEFAULT_PAGE, DEFAULT_PRINT, makeSheet } from '../../src/sheets/index.ts';
import { between, isSo, normal } from '../simulation/chances.ts';
import { type Answered, answersTo, meetingsOf } from './answers.ts';
import type { Invented } from './cast.ts';
import { type Going, moodFor, type Notebook, notebook } from './notes.ts';

/** Any Monday: only weekdays and months of age count. */
const MONDAY: Day = '2026-11-23';
/** The weeks, the current one included, whose plans are kept; they are made for the whole week. */
const WEEKS_PLANNED = 2;
const DAYS_A_WEEK = 7;
/** After all that is done in the current week. */
const SUNDAY = 6;
/** The week's day, as a place among those of the child, that gets what the adult asks for. */
const ASKED_ON = 1;
/** A step at which colours that are near each other stand together. */
const ASKED = { activity: 'find-the-same', step: 9, values: { content: 'colours' } } as const;
const LOOKED_AT = 6;
const PAGE = { page: DEFAULT_PAGE, print: DEFAULT_PRINT };

/** Any time before the days that are planned for. */
const madeBefore = (): Day => '0000-00-00';

const MISSES_DAY = 0.08;
const LEAVES_SHEET = 0.15;
/** What was left once is often left again. */
const LEAVES_MOVED = 0.6;
const FORM_SD = 0.4;
/** Kinds of help that are given, and what each counts as for the learner. */
const PROMPTS = { 'said-again': 'hint', pointed: 'hint', 'shown-one': 'shown' } as const;
const HELP: readonly (keyof typeof PROMPTS)[] = ['said-again', 'pointed', 'pointed', 'shown-one'];
/** How often each thing is written down. */
const NOTED = { help: 0.8, mood: 0.45, minutes: 0.7, note: 0.15, notePair: 0.45 } as const;

interface Life {
  readonly invented: Invented;
  readonly planner: Planner;
  readonly random: Random;
  readonly notes: Notebook;
  readonly sheets: DemoSheet[];
  /** By day after the Monday. */
  readonly plans: Map<number, readonly PlannedSheet[]>;
}

/** All that is recorded of an invented child; the same whenever it is made. */
export function lifeOf(invented: Invented, planner: Planner): DemoChild {
  const random = randomFrom(invented.seed);
  const notes = notebook(invented.notesFrom);
  const life: Life = { invented, planner, random, notes, sheets: [], plans: new Map() };
  for (let week = -invented.weeks; week <= 0; week++) liveWeek(life, week);
  const plans = [...life.plans]
    .filter(([day]) => day >= DAYS_A_WEEK * (1 - WEEKS_PLANNED))
    .map(([day, sheets]) => ({ day, sheets }));
  return { ...invented.facts, sheets: life.sheets, plans };
}

function liveWeek(life: Life, week: number): void {
  const { invented, random, plans } = life;
  const days = invented.weekdays.map((weekday) => DAYS_A_WEEK * week + weekday);
  const isPlanned = week > -WEEKS_PLANNED;
  const asked = askedSheets(life, week);
  if (isPlanned) planWholeWeek(life, days, asked);
  for (const [place, day] of days.entries()) {
    const isMissed = isSo(random, MISSES_DAY);
    const today = planned(life, day);
    const sheets = isPlanned || place !== ASKED_ON ? today : withAsked(today, asked);
    if (!isPlanned) plans.set(day, sheets);
    if (isPlanned || !isMissed) liveDay(life, day, sheets);
  }
}

/** As the adult does on the Friday before. */
function planWholeWeek(life: Life, days: readonly number[], asked: readonly PlannedSheet[]): void {
  const { invented, planner, plans } = life;
  const wishes = { ...PAGE, days: days.map(dayAt), minutes: invented.minutes };
  const week = [...planWeek(planner, knownSoFar(life), wishes).values()];
  for (const [place, day] of days.entries()) {
    const sheets = (week[place] ?? []).map(plannedSheet);
    plans.set(day, place === ASKED_ON ? withAsked(sheets, asked) : sheets);
  }
}

function planned(life: Life, day: number): readonly PlannedSheet[] {
  const { invented, planner } = life;
  const wishes = { ...PAGE, day: dayAt(day), minutes: invented.minutes };
  return planToday(planner, knownSoFar(life), wishes, madeBefore).map(plannedSheet);
}

function plannedSheet({ facts, why }: Suggestion): PlannedSheet {
  return { code: facts.code, why };
}

/** What the adult wants to have looked at again stands in place of the day's last sheet. */
function withAsked(
  sheets: readonly PlannedSheet[],
  asked: readonly PlannedSheet[],
): readonly PlannedSheet[] {
  return [...sheets.slice(0, Math.max(0, sheets.length - asked.length)), ...asked];
}

/** The one with most meetings of the pair among some that the adult has looked at. */
function askedSheets({ invented, planner, random }: Life, week: number): readonly PlannedSheet[] {
  const { mixesUp, weeks } = invented;
  if (mixesUp === undefined || week + weeks < mixesUp.askedFrom) return [];
  const looked = Array.from({ length: LOOKED_AT }, () => {
    const made = makeSheet({ ...ASKED, ...PAGE, seed: random.int(0, MAX_SEED) });
    const facts = made.ok ? planner.read(made.value.code) : undefined;
    return facts ? [facts] : [];
  }).flat();
  const [most] = looked.sort((one, other) => meetingsOf(other, mixesUp) - meetingsOf(one, mixesUp));
  return most ? [{ code: most.code, why: 'asked' }] : [];
}

function liveDay(life: Life, day: number, sheets: readonly PlannedSheet[]): void {
  const form = normal(life.random, 0, FORM_SD);
  for (const { code, why } of sheets) {
    const random = life.random.fork();
    const facts = life.planner.read(code);
    const isLeft = isSo(random, why === 'moved-on' ? LEAVES_MOVED : LEAVES_SHEET);
    if (facts && !isLeft) life.sheets.push(sheetDone(life, day, form, facts, random));
  }
}

function sheetDone(
  life: Life,
  day: number,
  form: number,
  facts: SheetFacts,
  random: Random,
): DemoSheet {
  const { invented, notes } = life;
  const { lapse, pace, mixesUp } = invented;
  const level = random.pick(HELP);
  const ability = trueAbility(invented, facts.skill, day) + form;
  const child = { ability, lapse, help: PROMPTS[level], ...(mixesUp ? { mixesUp } : {}) };
  const answers = answersTo(facts, child, random.fork());
  const outcomes = answers.map(({ outcome }) => outcome);
  const chosen = answers.flatMap(({ choice }, task) => (choice ? [{ task, ...choice }] : []));
  const going = goingOf(answers);
  const isNoted = isSo(random, going === 'pair' ? NOTED.notePair : NOTED.note);
  const note = isNoted ? notes(going) : undefined;
  const minutes = Math.max(1, Math.round(pace * facts.minutes * between(random, 0.75, 1.35)));
  const isHelped = outcomes.includes('with-help');
  return {
    day,
    code: facts.code,
    did: lettersOf(outcomes),
    ...(chosen.length > 0 ? { chosen } : {}),
    ...(isHelped && isSo(random, NOTED.help) ? { help: level } : {}),
    ...(isSo(random, NOTED.mood) ? { mood: moodFor(going, random) } : {}),
    ...(isSo(random, NOTED.minutes) ? { minutes } : {}),
    ...(note === undefined ? {} : { note }),
  };
}

function goingOf(answers: readonly Answered[]): Going {
  if (answers.some(({ isPair }) => isPair)) return 'pair';
  const right = answers.filter(({ outcome }) => outcome === 'right').length / answers.length;
  if (right === 1) return 'well';
  return right > 0.5 ? 'middling' : 'hard';
}

function trueAbility({ weeks, usual, apart }: Invented, skill: Skill, day: number): number {
  const { start, weekly } = apart?.[skill] ?? usual;
  return start + weekly * (day / DAYS_A_WEEK + weeks);
}

function dayAt(day: number): Day {
  return addDays(MONDAY, day);
}

/** The records so far, read as the app reads them. */
function knownSoFar({ invented, planner, sheets, plans }: Life): Known {
  const all = [...plans].map(([day, sheets]) => ({ day, sheets }));
  const child = { ...invented.facts, sheets, plans: all };
  const words = demoWords('en', planner.read);
  const view = viewOf(entriesOf({ children: [child] }, dayAt(SUNDAY), words), 'demo');
  const known = knownOf(view, view.children[0]?.id ?? '');
  if (!known) throw new Error(`demo › ${invented.facts.nickname}: expected a child in view`);
  return known;
}
