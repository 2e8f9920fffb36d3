// What the person has entered so far, sense or not; the core alone judges it.
import type { Value } from '../../activities/index.ts';
import type { Stock } from '../../records/index.ts';

export interface Entries {
  readonly activity: string;
  readonly step: number;
  /** Parameters that the person set, against what the step asks for. */
  readonly changes: Readonly<Record<string, Value>>;
  /** Absent: as many as the step advises. */
  readonly tasks?: number;
  readonly sheets: number;
  readonly seed: number;
  /** Seed of the first sheet itself, where it was opened by its code; the others come from `seed`. */
  readonly first?: number;
  readonly paper: string;
  readonly orientation: string;
  readonly print: string;
  /** The only colours, by name; absent: all. */
  readonly colours?: readonly string[];
  /** Numbers of the family's own pictures that the sheets may show; absent: none. */
  readonly pictures?: readonly string[];
  /** These pictures alone. */
  readonly onlyOwn?: true;
  /** The letters that contents of letters are about, each once and in order, so that they tell no name; absent: all. */
  readonly letters?: string;
  /** Whether each child of a group has the letters of its own name (`yes`); absent: not. */
  readonly ownLetters?: string;
  /** How the page is laid out and drawn, where it is not the usual way. */
  readonly hand?: string;
  readonly size?: string;
  readonly ink?: string;
  readonly margin?: string;
  /** How the sheets come about; absent: printed. */
  readonly made?: string;
  /** By hand, in the layout that is quickest by hand (`yes`); absent: as asked for. */
  readonly quick?: string;
  /** Sheets that were changed, each as `2:CODE`, its number and its code; absent: none. */
  readonly changed?: readonly string[];
  /** Curricula whose goals the adult's page names; absent: none. */
  readonly goals?: readonly string[];
  /** What is printed after each sheet to be cut out; absent: nothing. */
  readonly toCut?: readonly string[];
  /** Only with what the house has; absent: with anything. */
  readonly atHand?: true;
  /** What the house has, put in before anything is made; it is no part of the address. */
  readonly stock?: Stock;
}

/** What a first visit shows, apart from the seed. */
export const FIRST_ENTRIES: Omit<Entries, 'seed'> = {
  activity: 'in-every-box',
  step: 1,
  changes: {},
  sheets: 10,
  paper: 'A4',
  orientation: 'portrait',
  print: 'colour',
};

/** What may be said of the page's layout, each with the choice that is the usual one and is not written down. */
export const USUAL_LAYOUT = { hand: 'right', size: 'usual', ink: 'full', margin: 'usual' } as const;
export type LayoutChoice = keyof typeof USUAL_LAYOUT;
export const LAYOUT_CHOICES = Object.keys(USUAL_LAYOUT) as readonly LayoutChoice[];

/** Another layout; the page advises anew how many tasks. */
export function withLayout(entries: Entries, name: LayoutChoice, value: string): Entries {
  const { [name]: _before, ...others } = withoutTasks(entries);
  return value === USUAL_LAYOUT[name] ? others : { ...others, [name]: value };
}

/** Sheets that come about in another way; only by hand there is a quickest layout. */
export function withMade(entries: Entries, made: string, quick?: string): Entries {
  const { made: _made, quick: _quick, ...others } = entries;
  return {
    ...others,
    ...(made === 'printed' ? {} : { made }),
    ...(made === 'by-hand' && quick === 'yes' ? { quick } : {}),
  };
}

/** Only with printed sheets come pages to be cut out. */
export function isPrinted({ made = 'printed' }: Entries): boolean {
  return made === 'printed';
}

/** Another paper. One half as large lies sideways at first: it is then as wide as the whole one upright. */
export function onPaper(entries: Entries, paper: string): Entries {
  return { ...entries, paper, ...(paper === 'A5' ? { orientation: 'landscape' } : {}) };
}

/** Parameters that are the adult's choice at any step, so that they stay when the step changes. */
const KEPT_AT_ANY_STEP: readonly string[] = ['content', 'response'];

/** Another step: it decides all that is not the adult's lasting choice. */
export function atStep(entries: Entries, step: number): Entries {
  const kept = Object.entries(entries.changes).filter(([name]) => KEPT_AT_ANY_STEP.includes(name));
  return { ...withoutTasks(entries), step, changes: Object.fromEntries(kept) };
}

/** Other values as a whole, given as a step and what differs from it; the page advises how many tasks. */
export function withValues(entries: Entries, step: number, changes: Entries['changes']): Entries {
  return { ...withoutTasks(entries), step, changes };
}

/** Another activity, begun at a step of its own. */
export function atActivity(entries: Entries, activity: string, step: number): Entries {
  return { ...withoutTasks(entries), activity, step, changes: {} };
}

/** One parameter set by the person, even where it is what the step asks for. */
export function withChange(entries: Entries, name: string, value: Value): Entries {
  return { ...entries, changes: { ...entries.changes, [name]: value } };
}

/** Only with these colours; with none chosen, with all. */
export function withColours(entries: Entries, colours: readonly string[]): Entries {
  const { colours: _colours, ...others } = entries;
  return colours.length === 0 ? others : { ...others, colours };
}

/** With these pictures of the family's own, beside the others or alone; the page advises how many tasks. */
export function withPictures(
  entries: Entries,
  pictures: readonly string[],
  onlyOwn: boolean,
): Entries {
  const { pictures: _pictures, onlyOwn: _onlyOwn, ...others } = withoutTasks(entries);
  if (pictures.length === 0) return others;
  return { ...others, pictures, ...(onlyOwn ? { onlyOwn } : {}) };
}

/** About these letters of a name, told without their order; about all for a name of none. */
export function withName(entries: Entries, name: string): Entries {
  const { letters: _letters, ...others } = withoutTasks(entries);
  const letters = lettersIn(name);
  return letters === '' ? others : { ...others, letters };
}

/** What is kept of a name: its letters, each once, as capitals and in the order of their code points. */
export function lettersIn(name: string): string {
  const characters = name.normalize('NFC').toUpperCase().replace(/\s/gu, '');
  return [...new Set(characters)].sort().join('');
}

/** Each child of a group about the letters of its own name, or all alike. */
export function withOwnLetters(entries: Entries, isOwn: boolean): Entries {
  const { ownLetters: _ownLetters, ...others } = entries;
  return isOwn ? { ...others, ownLetters: 'yes' } : others;
}

/** The same sheets, with the goals of these curricula on the adult's page. */
export function withGoals(entries: Entries, goals: readonly string[]): Entries {
  const { goals: _goals, ...others } = entries;
  return goals.length === 0 ? others : { ...others, goals };
}

/** The same sheets, with this printed after each of them to be cut out. */
export function withToCut(entries: Entries, toCut: readonly string[]): Entries {
  const { toCut: _toCut, ...others } = entries;
  return toCut.length === 0 ? others : { ...others, toCut };
}

/** Only with what the house has, or with anything; a sheet that was opened by its code may be of anything. */
export function withAtHand(entries: Entries, isAtHand: boolean): Entries {
  const { atHand: _atHand, first, ...others } = entries;
  if (isAtHand) return { ...others, atHand: true };
  return first === undefined ? others : { ...others, first };
}

/** The entries with what the house has now, where they ask for it. */
export function withStock(entries: Entries, stock: Stock | undefined): Entries {
  if (entries.atHand && stock !== undefined) return { ...entries, stock };
  const { stock: before, ...others } = entries;
  return before === undefined ? entries : others;
}

/** The same recipe with other sheets. */
export function withSeed(entries: Entries, seed: number): Entries {
  const { first: _first, ...others } = entries;
  return { ...others, seed };
}

function withoutTasks(entries: Entries): Entries {
  const { tasks: _tasks, ...others } = entries;
  return others;
}
