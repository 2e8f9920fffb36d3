// The words of the pages that go round the tasks, in each language.
import { WORDINGS } from '../activities/index.ts';
import { inEachLanguage, type Language, type Say, sayIn } from '../languages/index.ts';
import { codeIn, type FootLabels } from '../page/index.ts';
import { adultWords } from './adult-words.ts';
import { goalsWords } from './goals-words.ts';
import { MESSAGES } from './messages-en.ts';
import type { CutWords, MarkingWords, PageWords, RulerWords } from './page-words.ts';

type SayPage = Say<typeof MESSAGES>;

/** As many underscores as leave room for a number. */
const BLANK = '_'.repeat(8);

const WORDS: Readonly<Record<Language, PageWords>> = inEachLanguage(wordsIn);

export function pageWords(language: Language): PageWords {
  return WORDS[language];
}

/** The labels of the foot of a sheet. */
export function footLabels(language: Language): FootLabels {
  return WORDS[language].foot;
}

function wordsIn(language: Language): PageWords {
  const say = sayIn(language, 'pages', MESSAGES);
  const { list } = WORDINGS[language];
  return {
    foot: {
      name: say('foot.name'),
      date: say('foot.date'),
      qr: say('foot.qr'),
    },
    inFile: say('foot.inFile'),
    about: (activity, step) => say('about', { activity, step }),
    aboutChanged: (activity, step) => say('about.changed', { activity, step }),
    sheetTitle: (activity, step, code) => say('title.sheet', { activity, step, code }),
    answersTitle: (page, pages) => say('answers', { page, pages }),
    answerLabel: (number, activity, step) => say('answers.label', { number, activity, step }),
    documentTitle: (parts) => {
      const names = parts.map(({ activity, steps: { text, count } }) =>
        say('part', { activity, steps: text, count }),
      );
      return say('title.document', { parts: list(names) });
    },
    cut: cutWords(say, language),
    marking: markingWords(say),
    adult: adultWords(language),
    goals: goalsWords(language),
    ruler: rulerWords(say),
  };
}

function markingWords(say: SayPage): MarkingWords {
  return {
    title: say('marking.title'),
    how: say('marking.how'),
    pageTitle: (page, pages) => say('marking.page', { page, pages }),
    column: (number, activity, { text, count }) =>
      say('marking.column', { number, activity, steps: text, count }),
    outOf: (tasks) => say('marking.outOf', { tasks }),
  };
}

function cutWords(say: SayPage, language: Language): CutWords {
  const apart = (code: string) => ({ code: codeIn(language, code) });
  return {
    cards: (code) => say('cut.cards', apart(code)),
    cardsTitle: (code) => say('cut.cards.title', { code }),
    key: (code) => say('cut.key', apart(code)),
    keyTitle: (code) => say('cut.key.title', { code }),
    keyAlt: say('cut.key.alt'),
    pieces: (code) => say('cut.pieces', apart(code)),
    piecesTitle: (code) => say('cut.pieces.title', { code }),
    page: (page, pages) => (pages === 1 ? '' : say('cut.page', { page, pages })),
  };
}

function rulerWords(say: SayPage): RulerWords {
  return {
    title: say('ruler.title'),
    about: say('ruler.about'),
    steps: say.all('ruler.steps'),
    across: say('ruler.across'),
    upright: say('ruler.upright'),
    measured: say('ruler.measured', { line: BLANK }),
  };
}
