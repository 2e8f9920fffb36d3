// What is said of a task while it is changed, in each language.
import { capitalised, type Language, WORDINGS } from '../activities/index.ts';
import type { DotLayout } from '../figures/index.ts';
import { inEachLanguage, type KeyUnder, sayIn } from '../languages/index.ts';
import { MESSAGES } from './messages-en.ts';

/** Answers told in full; more are counted. */
const MOST_TOLD = 3;

const SAYS = inEachLanguage((language) => sayIn(language, 'editing', MESSAGES));
export const EDITING_WORDS = inEachLanguage(wordsIn);

function wordsIn(language: Language) {
  const say = SAYS[language];
  const { list, number } = WORDINGS[language];
  return {
    noAnswer: say('noAnswer'),
    fault: (fault: string) => say('fault', { fault: capitalised(fault) }),
    several: (answers: readonly string[]) => {
      const told = [...new Set(answers)].slice(0, MOST_TOLD);
      if (told.length < 2) return say('several');
      const joined = told.reduce((before, next) => say('several.or', { before, next }));
      return say('several.told', { answers: joined, more: answers.length - told.length });
    },
    changed: (come: readonly string[], gone: readonly string[], answer: string) => {
      const says = changeText(say, list, come, gone);
      return says === '' ? answer : say('changed', { says, answer });
    },
    attribute: (name: AttributeName) => say(`attribute.${name}`),
    ink: say('ink'),
    size: (share: number) =>
      share === 1 ? say('size.full') : say('size.share', { percent: Math.round(share * 100) }),
    turn: (degrees: number) => {
      const key = `turn.${degrees}`;
      return say.has(key) ? say(key as 'turn.0') : say('turn.degrees', { degrees });
    },
    mirrored: (isMirrored: boolean) => say(isMirrored ? 'mirrored.yes' : 'mirrored.no'),
    count: (dots: number) => number(dots),
    layout: (layout: DotLayout) => say(`layout.${layout}`),
    at: (kind: PlaceKind, place: number) => say(`at.${kind}`, { number: place + 1 }),
    within: (outer: string, inner: string) => say('place.within', { outer, inner }),
    standing: (place: string, name: string) => say('place.figure', { place, name }),
    add: (kind: ItemKind) => say(`add.${kind}`),
    take: (kind: ItemKind) => say(`take.${kind}`),
    become: (was: string, place: string, is: string) =>
      say('become', { was, place: capitalised(place), is }),
    sentences: (all: readonly string[]) =>
      all.length === 0 ? '' : all.reduce((before, next) => say('sentences', { before, next })),
    /** A change of a number that the page tells the child, by the name of its field; `undefined` where it tells none. */
    tell: (field: string, was: number, is: number) => {
      const key = `tell.${field}`;
      return say.has(key) ? say(key as 'tell.asked', { was, is }) : undefined;
    },
  };
}

type Keyed<P extends string> = KeyUnder<typeof MESSAGES, P>;
type AttributeName = Keyed<'attribute'>;
/** What a place can be called, and what one item of a list. */
export type PlaceKind = Keyed<'at'>;
export type ItemKind = Keyed<'add'>;

/** What is right now and was not, and the other way round; empty where nothing of it can be named. */
function changeText(
  say: (typeof SAYS)['en'],
  list: (names: readonly string[]) => string,
  come: readonly string[],
  gone: readonly string[],
): string {
  if (come.length > 0 && gone.length > 0) {
    return say('changed.other', { gone: list(gone), come: list(come) });
  }
  if (come.length > 0) {
    return say('changed.more', { come: capitalised(list(come)), count: come.length });
  }
  if (gone.length === 0) return '';
  return say('changed.fewer', { gone: capitalised(list(gone)), count: gone.length });
}
