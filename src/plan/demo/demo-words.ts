// What people read of the invented group, in a language.
import { figureName } from '../../figures/index.ts';
import { inEachLanguage, type Language, sayIn } from '../../languages/index.ts';
import type { ReadFacts } from '../sheet-facts.ts';
import { MESSAGES } from './messages-en.ts';
import type { DemoChoice, DemoName, DemoNote } from './rows.ts';

export interface DemoWords {
  readonly nickname: (name: DemoName) => string;
  readonly note: (note: DemoNote) => string;
  /** What was chosen instead on the sheet of a code, as one who taps it there has it noted. */
  readonly chosen: (code: string, choice: DemoChoice) => string;
}

const SAYS = inEachLanguage((language) => sayIn(language, 'demo', MESSAGES));

/** The catalogue of the language must be there; `read` makes the sheets on which something was chosen. */
export function demoWords(language: Language, read: ReadFacts): DemoWords {
  const say = SAYS[language];
  return {
    nickname: (name) => say(`child.${name}`),
    note: (note) => say(`note.${note}`),
    chosen: (code, choice) =>
      language === 'en' ? choice.label : named(language, read(code), choice),
  };
}

/** The rows have it in English, which tells it among all that can be chosen at its place. */
function named(
  language: Language,
  sheet: ReturnType<ReadFacts>,
  { task, place, label }: DemoChoice,
): string {
  const decisions = sheet?.tasks[task]?.decisions ?? [];
  const option = decisions
    .flatMap(({ about, options }) => options.filter(({ mark }) => (about ?? mark) === place))
    .find(({ figure }) => figureName(figure) === label);
  return option === undefined ? label : figureName(option.figure, language);
}
