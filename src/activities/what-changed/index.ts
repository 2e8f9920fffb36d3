// The activity what-changed: what is different in the second picture?
import { defineActivity } from '../activity.ts';
import { chance } from './chance.ts';
import { decisions } from './decisions.ts';
import { draw, room } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { materialsOf } from './materials.ts';
import { MESSAGES } from './messages-en.ts';
import { solve } from './solve.ts';
import { type Answer, answerSchema, ID, PARAMETERS, printedSchema } from './task.ts';
import { WORDS } from './words.ts';

export const whatChanged = defineActivity({
  id: ID,
  codeNumber: 9,
  skill: 'telling-apart',
  parameters: PARAMETERS,
  limits: limitsOf,
  ladder: LADDER,
  printed: printedSchema,
  answer: answerSchema,
  generate,
  solve,
  sameAnswer,
  features,
  chance,
  decisions,
  room,
  draw,
  materials: materialsOf,
  messages: MESSAGES,
  words: WORDS,
});

/** The same places, in any order. */
function sameAnswer(one: Answer, other: Answer): boolean {
  const [places, others] = [new Set(one), new Set(other)];
  return places.size === others.size && [...places].every((place) => others.has(place));
}
