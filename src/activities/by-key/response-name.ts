// What a figure gets by the key, in a few words.
import { colourName, formName } from '../../figures/index.ts';
import { inEachLanguage, type Language, sayIn } from '../../languages/index.ts';
import { MESSAGES } from './messages-en.ts';
import type { Response } from './task.ts';

const SAYS = inEachLanguage((language) => sayIn(language, 'by-key', MESSAGES));

/** Such as "red ring", "blue", "upright stripes". */
export function responseName(response: Response, language: Language = 'en'): string {
  const say = SAYS[language];
  switch (response.kind) {
    case 'sign':
      return formName(response.sign, language);
    case 'fill':
      return say(`gets.${response.texture}`);
    default: {
      const { kind, colour } = response;
      return say(`gets.${kind}`, { key: colour, colour: colourName(colour, language) });
    }
  }
}
