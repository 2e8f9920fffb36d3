// Saying what is wrong with a task, or why something cannot be asked for, in any language.
import type { Told, ToldValue } from '../base/index.ts';
import { CONTENT_IDS, colourName, contentName, type Figure, figureName } from '../figures/index.ts';
import { type Language, type Messages, type Say, sayIn, type Values } from '../languages/index.ts';
import { COLOUR_NAMES } from '../palette/index.ts';
import { MESSAGES as FAULTS } from './fault-messages.ts';
import { WORDINGS } from './in-words.ts';
import { ACTIVITIES, isActivityId } from './registry.ts';

/** What is wrong with a task, said by an activity or by all: a phrase without a full stop. */
export function faultIn(language: Language, fault: Told): string {
  return sayTold(language, fault, spaceIn(language, fault.space));
}

/** The message of `told`, said by whoever says its space, with its places filled in the language. */
export function sayTold(language: Language, { key, values = {} }: Told, say: Say): string {
  const sayPart = (part: string | number | Told) =>
    typeof part === 'object' ? sayTold(language, part, say) : String(part);
  const filled = Object.entries(values).map(([name, value]) =>
    typeof value === 'object' && 'commas' in value
      ? { [name]: WORDINGS[language].inRow(value.commas.map(sayPart)) }
      : filledIn(language, name, value),
  );
  return say(key, Object.assign({}, ...filled));
}

const known = new Map<string, Say>();

/** Each space of each language is made when it is first spoken in. */
function spaceIn(language: Language, space: string): Say {
  const name = `${language} ${space}`;
  const before = known.get(name);
  if (before) return before;
  const messages: Messages = isActivityId(space) ? ACTIVITIES[space].messages : FAULTS;
  const say = sayIn(language, space, messages);
  known.set(name, say);
  return say;
}

function filledIn(
  language: Language,
  name: string,
  value: Exclude<ToldValue, { readonly commas: unknown }>,
): Values {
  if (typeof value !== 'object') return { [name]: value };
  if ('figure' in value) return { [name]: figureName(value.figure as Figure, language) };
  if ('list' in value) return { [name]: WORDINGS[language].list(value.list.map(String)) };
  if ('colour' in value) {
    const colour = COLOUR_NAMES.find((one) => one === value.colour);
    return { [name]: colour === undefined ? value.colour : colourName(colour, language) };
  }
  const content = CONTENT_IDS.find((one) => one === value.content);
  return {
    [name]: content === undefined ? value.content : contentName(content, language),
    [`${name}Id`]: value.content,
  };
}
