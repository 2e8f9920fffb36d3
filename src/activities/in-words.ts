// What an activity says in every language: its own messages, and the words that all activities share.
import {
  FIGURE_WORDS,
  type Figure,
  type FigureCase,
  figureName,
  formOf,
} from '../figures/index.ts';
import {
  inEachLanguage,
  type Language,
  type Messages,
  type Say,
  sayIn,
  type Values,
} from '../languages/index.ts';
import { isMirrored } from '../page/index.ts';
import type { ActivityWords } from './activity.ts';
import type { Parameter, ParameterSpecs } from './parameters.ts';
import { MESSAGES } from './wording-messages.ts';

/** Words of one language that are no activity's own. `agreeing` is what another language chooses a form by. */
export interface Wording {
  readonly language: Language;
  /** Which way a page is read, for messages that say left and right: they choose by it. */
  readonly reading: 'leftward' | 'rightward';
  /** The number as a word up to twenty, in figures above. */
  readonly number: (count: number, agreeing?: Values) => string;
  /** "first" for place 0, up to "tenth"; then "number 11". */
  readonly ordinal: (place: number, agreeing?: Values) => string;
  /** Such as "red, blue and green". */
  readonly list: (names: readonly string[]) => string;
  /** One after another, such as "red, blue, green". */
  readonly inRow: (names: readonly string[]) => string;
  /** What is longer, one after another: such as "1 red, blue; 2 green". */
  readonly inParts: (phrases: readonly string[]) => string;
  /** What a size is called among sizes, by its rank: such as "small", "biggest". */
  readonly size: (sizes: readonly number[], size: number) => string;
  /** The figure's name; `the`: as the one that is meant, such as "the red circle". */
  readonly figure: (figure: Figure, as?: FigureCase) => string;
  /** The figure's name, with its size by its rank among the sizes of `all`, where sizes differ. */
  readonly among: (all: readonly Figure[], figure: Figure, as?: FigureCase) => string;
  readonly form: (typeof FIGURE_WORDS)['en']['form'];
  readonly colour: (typeof FIGURE_WORDS)['en']['colour'];
  readonly fill: (typeof FIGURE_WORDS)['en']['fill'];
  readonly content: (typeof FIGURE_WORDS)['en']['content'];
  readonly gender: (typeof FIGURE_WORDS)['en']['gender'];
  /** A length in whole mm with its unit. */
  readonly mm: (mm: string) => string;
}

export const WORDINGS: Readonly<Record<Language, Wording>> = inEachLanguage(wordingIn);

function wordingIn(language: Language): Wording {
  const say: Say = sayIn(language, 'wording', MESSAGES);
  const figures = FIGURE_WORDS[language];
  const ordinal = (place: number, agreeing: Values = {}) => {
    const key = `ordinal.${place + 1}`;
    const values = { gender: 'none', ...agreeing };
    return say.has(key) ? say(key, values) : say('ordinal.more', { ...values, place: place + 1 });
  };
  return {
    language,
    reading: isMirrored(language) ? 'leftward' : 'rightward',
    number: (count, agreeing = {}) => {
      const key = `number.${count}`;
      return say.has(key) ? say(key, { gender: 'none', ...agreeing }) : String(count);
    },
    ordinal,
    list: (names) => listed(say, names),
    inRow: (names) => joined(say, 'row.comma', names),
    inParts: (phrases) => joined(say, 'row.semicolon', phrases),
    size: (sizes, size) => {
      const { key, rank } = rankedIn(sizes, size);
      // A size alone is of no figure that it could agree with.
      return say(`size.${key}`, { gender: 'none', ordinal: ordinal(rank) });
    },
    figure: (figure, as = 'name') => figureName(figure, language, as),
    among: (all, figure, as = 'name') => amongText(say, { language, ordinal }, all, figure, as),
    form: figures.form,
    colour: figures.colour,
    fill: figures.fill,
    content: figures.content,
    gender: figures.gender,
    mm: (mm) => say('mm', { mm }),
  };
}

function listed(say: Say, names: readonly string[]): string {
  const last = names.at(-1) ?? '';
  if (names.length < 2) return last;
  return say('list.last', { before: joined(say, 'list.comma', names.slice(0, -1)), last });
}

function joined(say: Say, key: string, phrases: readonly string[]): string {
  return phrases.length === 0 ? '' : phrases.reduce((before, next) => say(key, { before, next }));
}

function amongText(
  say: Say,
  { language, ordinal }: Pick<Wording, 'language' | 'ordinal'>,
  all: readonly Figure[],
  { size = 1, ...rest }: Figure,
  as: FigureCase,
): string {
  const sizes = all.map((figure) => figure.size ?? 1);
  if (new Set(sizes).size < 2) return figureName(rest, language, as);
  const { key, rank } = rankedIn(sizes, size);
  const gender = FIGURE_WORDS[language].gender(formOf(rest));
  return say(`among.${as === 'the' ? 'the.' : ''}${key}`, {
    name: figureName(rest, language),
    nameThe: figureName(rest, language, 'the'),
    ordinal: ordinal(rank, { gender }),
    gender,
  });
}

function rankedIn(sizes: readonly number[], size: number) {
  const ranks = [...new Set(sizes)].sort((a, b) => a - b);
  const rank = ranks.indexOf(size);
  return { rank, key: sizeKey(rank, ranks.length) };
}

function sizeKey(rank: number, count: number): string {
  if (count === 2) return rank === 0 ? 'small' : 'big';
  if (rank === 0) return 'smallest';
  if (rank === count - 1) return 'biggest';
  return count === 3 ? 'middle' : 'rank';
}

/** What is said alike of all tasks, unless an activity says it itself. */
type SaidOfAll = 'show' | 'help' | 'easierNow' | 'harderNow' | 'lookFor';

/** What an activity says of its tasks. */
export type Spoken<P> = Pick<ActivityWords<ParameterSpecs, P>, 'say' | 'describe' | 'answer'> &
  Partial<Omit<ActivityWords<ParameterSpecs, P>, 'name' | 'about' | 'steps' | 'parameters'>>;

/**
 * The words of an activity in all languages. Its messages hold `name`, `about`, `steps.1` and so on, for each parameter
 * `set.NAME.label`, `set.NAME.help` and a phrase for each choice, `set.NAME.VALUE`; what `speak` leaves out, `show`,
 * `help.1`, `easier`, `harder`, `lookFor.1`; and whatever `speak` says. Choices of
 * content and of sticker sizes need no messages.
 */
export function inAllLanguages<const M extends Messages, S extends ParameterSpecs, P>(
  id: string,
  messages: M,
  parameters: S,
  speak: (say: Say<M>, wording: Wording) => Spoken<P>,
): Readonly<Record<Language, ActivityWords<S, P>>> {
  return inEachLanguage((language) => {
    const say = sayIn(language, id, messages);
    const wording = WORDINGS[language];
    return {
      name: say('name'),
      about: say('about'),
      steps: say.all('steps'),
      parameters: parameterWords(say, parameters, wording) as ActivityWords<S, P>['parameters'],
      ...saidOfAll(say),
      ...speak(say, wording),
    };
  });
}

function saidOfAll(say: Say): Pick<ActivityWords, SaidOfAll> {
  return {
    show: () => say('show'),
    help: () => say.all('help'),
    easierNow: () => say('easier'),
    harderNow: () => say('harder'),
    lookFor: () => say.all('lookFor'),
  };
}

function parameterWords(
  say: Say,
  parameters: ParameterSpecs,
  wording: Wording,
): ActivityWords['parameters'] {
  return Object.fromEntries(
    Object.entries(parameters).map(([name, parameter]) => {
      const choices = choicePhrases(say, name, parameter, wording);
      const label = say(`set.${name}.label`);
      const help = say(`set.${name}.help`, { reading: wording.reading });
      return [name, { label, help, ...(choices === undefined ? {} : { choices }) }];
    }),
  );
}

function choicePhrases(
  say: Say,
  name: string,
  parameter: Parameter,
  wording: Wording,
): Readonly<Record<string, string>> | undefined {
  if (parameter.kind !== 'choice') return undefined;
  const phrase = (value: string) => {
    const key = `set.${name}.${value}`;
    if (say.has(key)) return say(key, { reading: wording.reading });
    return name === 'stickerMm' ? wording.mm(value) : wording.content(value as never);
  };
  return Object.fromEntries(parameter.values.map((value) => [value, phrase(value)]));
}
