// What to do with a child on one day: a few short sheets, each with its reason.
import type { ActivityId, Skill } from '../activities/index.ts';
import type { Day } from '../records/index.ts';
import { gatheredMaterials } from '../sheets/index.ts';
import { stockAfter } from '../supplies/index.ts';
import { nextSheet, type Setting, type Suggestion, skillsLeft } from './course.ts';
import { weekdayOf } from './days.ts';
import { favouriteSheet } from './favourites.ts';

export const FEWEST_SHEETS = 2;
export const MOST_SHEETS_A_DAY = 4;
/** How many minutes a day's plan is made for unless a person says otherwise: common practice, no source. */
export const USUAL_MINUTES = 10;
/** Favourites come once something is known of the child: common practice, no source. */
const SHEETS_BEFORE_FAVOURITES = 6;

export interface DayWanted {
  readonly day: Day;
  readonly minutes: number;
  /** What came before in the plan, the last of it directly before. */
  readonly before: readonly { readonly day: Day; readonly activity: ActivityId }[];
  /** What stands on the day already, moved on from earlier or chosen by a person. */
  readonly standing: readonly Suggestion[];
  readonly without?: ReadonlySet<ActivityId>;
  /** Skills to come first on the day, such as those not met this week. */
  readonly first?: ReadonlySet<Skill>;
  /** Skills that a person wants more of. */
  readonly favoured?: ReadonlySet<Skill>;
}

/** Sheets for about so many minutes, two to four; fewer only where nothing else suits. */
export function planDay(setting: Setting, wanted: DayWanted): readonly Suggestion[] {
  const sheets: Suggestion[] = [...wanted.standing];
  const minutes = () => minutesOf(sheets, setting.standing.pace);
  while (sheets.length < MOST_SHEETS_A_DAY) {
    const isEnough = sheets.length >= FEWEST_SHEETS && !hasRoom(minutes(), sheets, wanted.minutes);
    const next = isEnough ? undefined : sheetAfter(after(setting, sheets), wanted, sheets);
    if (!next) break;
    sheets.push(next);
  }
  const isFavourite = ({ why }: Suggestion) => why === 'favourite';
  return [...sheets.filter((sheet) => !isFavourite(sheet)), ...sheets.filter(isFavourite)];
}

/** The setting once these sheets have taken what they need of the house. */
export function after<S extends Pick<Setting, 'stock'>>(
  setting: S,
  sheets: readonly Suggestion[],
): S {
  const { stock } = setting;
  if (stock === undefined) return setting;
  const used = gatheredMaterials(sheets.flatMap(({ facts }) => facts.materials));
  return { ...setting, stock: stockAfter(stock, used) };
}

/** The minutes that sheets take a child of this pace. */
export function minutesOf(sheets: readonly Suggestion[], pace: number): number {
  return pace * sheets.reduce((sum, { facts }) => sum + facts.minutes, 0);
}

/** Whether one more sheet, as long as those so far, keeps nearer to the minutes wanted than none. */
function hasRoom(minutes: number, sheets: readonly Suggestion[], wanted: number): boolean {
  return minutes + minutes / sheets.length / 2 <= wanted;
}

function sheetAfter(
  setting: Setting,
  wanted: DayWanted,
  sheets: readonly Suggestion[],
): Suggestion | undefined {
  const { day } = wanted;
  const today = sheets.map(({ facts }) => ({ day, activity: facts.activity }));
  const planned = [...wanted.before, ...today];
  const last = planned.at(-1);
  const taken = [...today, ...(last ? [last] : [])].map(({ activity }) => activity);
  const without = new Set([...(wanted.without ?? []), ...taken]);
  const plain = { day, planned, without };
  if (isFavouriteDue(setting, wanted, sheets)) {
    const favourite = favouriteSheet(setting, plain);
    if (favourite) return favourite;
  }
  const left = skillsLeft(today.map(({ activity }) => activity));
  const { skills, isFavoured } = skillsFor(wanted, left, sheets.length);
  const next = nextSheet(setting, { ...plain, skills });
  const isMeant = isFavoured && next !== undefined && skills.has(next.facts.skill);
  return next && isMeant && next.why !== 'first-of-skill' ? { ...next, why: 'favoured' } : next;
}

/** Skills that lack come first, every other sheet is of the favoured ones, else of any not had on the day. */
function skillsFor(
  { first, favoured }: DayWanted,
  left: ReadonlySet<Skill>,
  place: number,
): { readonly skills: ReadonlySet<Skill>; readonly isFavoured: boolean } {
  const wantedFirst = among(first, left);
  if (wantedFirst.size > 0) return { skills: wantedFirst, isFavoured: false };
  const isTurn = favoured !== undefined && favoured.size > 0 && place % 2 === 0;
  return isTurn ? { skills: favoured, isFavoured: true } : { skills: left, isFavoured: false };
}

function among(
  some: ReadonlySet<Skill> | undefined,
  others: ReadonlySet<Skill>,
): ReadonlySet<Skill> {
  return new Set([...(some ?? [])].filter((skill) => others.has(skill)));
}

/** Every other day ends on something that goes well. */
function isFavouriteDue(
  { standing }: Setting,
  { day }: DayWanted,
  sheets: readonly Suggestion[],
): boolean {
  const isDay = weekdayOf(day) % 2 === 0;
  const isKnown = standing.given.length >= SHEETS_BEFORE_FAVOURITES;
  const has = sheets.some(({ why }) => why === 'favourite');
  return isDay && isKnown && !has && sheets.length === FEWEST_SHEETS;
}
