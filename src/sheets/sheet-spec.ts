// What fixes a sheet: everything that its code carries and that makes the same sheet again.
import { type ActivityId, activityOf, type Language, type Value } from '../activities/index.ts';
import type { TaskEdit } from '../editing/index.ts';
import { type PictureChoice, picturesField } from '../figures/index.ts';
import { HOME_PAPERS, type PageChoice, type PrintStyle } from '../page/index.ts';
import { COLOUR_NAMES, type ColourName } from '../palette/index.ts';

export interface SheetSpec {
  readonly activity: ActivityId;
  /** Rung of the activity's ladder, 1 upward. */
  readonly step: number;
  /** Parameters that are to differ from the step's; those left out are the step's own. */
  readonly values: Readonly<Record<string, Value>>;
  /** Whole number, 0 to 2^32 − 1. */
  readonly seed: number;
  /** How many tasks stand on the sheet, 1 to `MOST_TASKS`. */
  readonly tasks: number;
  readonly page: PageChoice;
  readonly print: PrintStyle['print'];
  /** The only colours of figures and responses, each once in the order of the colour names; absent: all. */
  readonly colours?: readonly ColourName[];
  /** Pictures of a family's own that its tasks may show; absent: none. Only where pictures are what it is about. */
  readonly pictures?: PictureChoice;
  /** The hand that writes, where it is not the right one. */
  readonly hand?: 'left';
  /** Tasks drawn larger, fewer of them on a page; absent: as usual. */
  readonly size?: 'large';
  /** Figures as outlines where the task allows; absent: in full. */
  readonly ink?: 'saving';
  /** Letters of a name, of the content's alphabet and in its order, that the sheet is about; absent: all letters alike. */
  readonly letters?: string;
  /** What was changed in it, by task; absent: nothing. */
  readonly edits?: readonly TaskEdit[];
}

export const SIZES = ['usual', 'large'] as const;

/** What is chosen for paper and print, apart from what is asked. */
export type PrintChoices = Pick<
  SheetSpec,
  'page' | 'print' | 'colours' | 'pictures' | 'hand' | 'size' | 'ink' | 'letters'
>;

/** These choices alone, each in the one form that a spec holds, so that a sheet has one code. */
export function printChoicesOf({
  page,
  print,
  colours,
  pictures,
  ...choices
}: PrintChoices): PrintChoices {
  const { paper, orientation, margin } = page;
  return {
    page: { paper, orientation, ...(margin === undefined ? {} : { margin }) },
    print,
    ...coloursField(colours),
    ...picturesField(pictures),
    ...(choices.hand === undefined ? {} : { hand: choices.hand }),
    ...(choices.size === undefined ? {} : { size: choices.size }),
    ...(choices.ink === undefined ? {} : { ink: choices.ink }),
    ...(choices.letters === undefined ? {} : { letters: choices.letters }),
  };
}

/** Whether an activity can show pictures of a family's own: all that have pictures among their contents. */
export function takesOwnPictures(activity: ActivityId): boolean {
  const { content } = activityOf(activity).parameters;
  return content?.kind === 'choice' && content.values.includes('pictures');
}

/** Whether own pictures could stand on a sheet. */
export function isAboutPictures(
  activity: ActivityId,
  values: Readonly<Record<string, Value>>,
): boolean {
  return values.content === 'pictures' && takesOwnPictures(activity);
}

/** How a sheet is printed and in which colours, as its tasks must know it; to draw them, in which language, too. */
export function styleOf(
  {
    print,
    colours,
    pictures,
    hand,
    ink,
    letters,
  }: Pick<SheetSpec, 'print' | 'colours' | 'pictures' | 'hand' | 'ink' | 'letters'>,
  language?: Language,
): PrintStyle {
  return {
    print,
    ...coloursField(colours),
    ...picturesField(pictures),
    ...(hand === undefined ? {} : { hand }),
    ...(ink === undefined ? {} : { ink }),
    ...(letters === undefined ? {} : { letters }),
    ...(language === undefined ? {} : { language }),
  };
}

/**
 * The paper of pages for the adult: those of a small or a large sheet come on A4, which is read and filed. It lies where
 * the paper in the printer does, and stands for two small sheets, which lie on it.
 */
export function adultPaperOf({ paper, orientation }: PageChoice): PageChoice {
  const isUsual = HOME_PAPERS.some((name) => name === paper);
  if (isUsual) return { paper, orientation };
  return paper === 'A3' ? { ...DEFAULT_PAGE, orientation } : DEFAULT_PAGE;
}

/** Colours as a spec holds them: each once, in one order, so that a sheet has one code; no field for none. */
export function coloursField(
  colours: readonly ColourName[] | undefined,
): Pick<SheetSpec, 'colours'> {
  return colours ? { colours: COLOUR_NAMES.filter((name) => colours.includes(name)) } : {};
}

/** More than this on one page leaves no task a child's room (common practice, no source). */
export const MOST_TASKS = 12;
/** Ten reams of paper; a limit against slips of the hand. */
export const MOST_SHEETS = 5000;
/** Kinds of sheet in one pack. */
export const MOST_PARTS = 100;

export const DEFAULT_PAGE: PageChoice = { paper: 'A4', orientation: 'portrait' };
export const DEFAULT_PRINT: PrintStyle['print'] = 'colour';

/** The first step that is a first guess for the age; the ladder's last step if all are for younger ones. */
export function stepForAge(id: ActivityId, age: number): number {
  const { ladder } = activityOf(id);
  const index = ladder.findIndex((rung) => rung.age >= age);
  return index === -1 ? ladder.length : index + 1;
}
