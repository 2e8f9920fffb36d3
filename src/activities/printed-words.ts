// What is printed in tasks and told of their drawings, in each language; activities share it.
import { inEachLanguage, type Language, sayIn } from '../languages/index.ts';
import { MESSAGES } from './printed-messages.ts';

const WORDS = inEachLanguage((language) => {
  const say = sayIn(language, 'printed', MESSAGES);
  return {
    fold: say('fold'),
    emptyPlace: say('empty'),
    emptyCircle: say('empty.circle'),
    emptyForSticker: say('empty.sticker'),
    emptyOutline: say('empty.outline'),
    hole: say('hole'),
    thatSize: say('thatSize'),
    thatSizeIn: (colour: string) => say('thatSize.colour', { colour }),
  };
});

/** The words for drawings of this language; absent: English. */
export function printedWords(language: Language = 'en') {
  return WORDS[language];
}
