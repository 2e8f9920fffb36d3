// The words of the adult's page, in each language.
import { WORDINGS } from '../activities/index.ts';
import { colourName } from '../figures/index.ts';
import { type Language, type Say, sayIn } from '../languages/index.ts';
import { initialOf } from '../palette/index.ts';
import { MESSAGES } from './messages-adult-en.ts';
import type { AdultWords, PartName, WholeRange } from './page-words.ts';

type SayAdult = Say<typeof MESSAGES>;

/** More activities than this are counted in the title of a pack, not named: the list of sheets names them. */
const MOST_NAMED = 4;

export function adultWords(language: Language): AdultWords {
  const say = sayIn(language, 'adult', MESSAGES);
  const { list, inParts } = WORDINGS[language];
  return {
    ...headings(say),
    packTitle: (parts) => packTitle(say, list, parts),
    stickers: (diameterMm) => say('stickers', { diameterMm }),
    stickerEntry: (count, colour) => say('stickers.entry', { count, colour }),
    marks: (colours) =>
      say('marks', {
        marks: list(
          colours.map((colour) =>
            say('marks.entry', { colour: colourName(colour, language), mark: initialOf(colour) }),
          ),
        ),
      }),
    crayons: (colours) => say('crayons', { count: colours.length, colours: list(colours) }),
    partHeading: ({ activity, steps, sheets }, numbers) =>
      say('part', { activity, steps: steps.text, count: steps.count, sheets, numbers }),
    brief: {
      pencil: say('brief.pencil'),
      scissors: say('brief.scissors'),
      glue: say('brief.glue'),
      counters: say('brief.counters'),
      pockets: say('brief.pockets'),
      nothing: say('brief.nothing'),
      stickers: (diameterMm, stickers) => say('brief.stickers', { diameterMm, stickers }),
      list,
      inParts,
    },
    minutes: (minutes, sheets, ages) => minutesText(say, minutes, sheets, ages),
    sayWords: (words) => say('say.words', { words }),
    showOne: (how, sheet) => (sheet === undefined ? how : say('show.one', { sheet, how })),
    ladder: say.all('ladder'),
    stopAdvice: say.all('stop'),
    checkAdvice: (paper) => say('size.check', { paper }),
    cut: {
      title: say('cut'),
      kinds: {
        cards: say('cut.cards'),
        'key-card': say('cut.key-card'),
        pieces: say('cut.pieces'),
      },
      both: say('cut.both'),
      always: say.all('cut.always'),
    },
    pocket: {
      title: say('pocket'),
      advice: {
        write: say('pocket.write'),
        stickers: say('pocket.stickers'),
        pieces: say('pocket.pieces'),
        cut: say('pocket.cut'),
        fold: say('pocket.fold'),
      },
    },
    cautions: say.all('care'),
    moreSheets: (count) => say('sheets.more', { count }),
    proof: (tasks, doubts) => say('proof', { tasks, doubts, proven: tasks - doubts }),
    doubt: (sheet, task, reason, why) =>
      why.reduce(
        (before, next) => say('doubt.why', { before, next }),
        say(`doubt.${reason}`, { sheet, task }),
      ),
  };
}

/** What is always said alike. */
function headings(say: SayAdult) {
  return {
    title: say('title'),
    continued: say('continued'),
    layOut: say('layOut'),
    tools: {
      pencil: say('pencil'),
      scissors: say('scissors'),
      glue: say('glue'),
      counters: say('counters'),
      pockets: say('pockets'),
    },
    nothing: say('nothing'),
    start: say('start'),
    takes: say('takes'),
    say: say('say'),
    show: say('show'),
    helpHere: say('helpHere'),
    easier: say('easier'),
    harder: say('harder'),
    lookFor: say('lookFor'),
    help: say('help'),
    stop: say('stop'),
    size: say('size'),
    checkLine: say('size.line'),
    cutAdvice: say('size.halves'),
    care: say('care'),
    sheets: say('sheets'),
    doubts: say('doubts'),
  };
}

function minutesText(say: SayAdult, minutes: WholeRange, sheets: number, ages: WholeRange): string {
  const { least, most } = minutes;
  const time =
    least === most
      ? say('minutes.same', { minutes: least, sheets })
      : say('minutes.range', { least, most, sheets });
  return ages.least === ages.most
    ? say('minutes.age', { time, least: ages.least })
    : say('minutes.ages', { time, ...ages });
}

function packTitle(
  say: SayAdult,
  list: (names: readonly string[]) => string,
  parts: readonly PartName[],
): string {
  if (parts.length > MOST_NAMED) {
    const sheets = parts.reduce((sum, part) => sum + part.sheets, 0);
    return say('pack.many', { sheets, activities: parts.length });
  }
  const names = parts.map(({ activity, steps: { text, count }, sheets }) =>
    say('pack.part', { sheets, activity, steps: text, count }),
  );
  return say('pack.parts', { parts: list(names) });
}
