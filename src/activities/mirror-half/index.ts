// The activity mirror-half: finish the other half.
import { defineActivity } from '../activity.ts';
import { chance } from './chance.ts';
import { draw, room } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { materialsOf } from './materials.ts';
import { cellKind } from './measures.ts';
import { MESSAGES } from './messages-en.ts';
import { pieces } from './pieces.ts';
import { sameAnswer } from './same-answer.ts';
import { solve } from './solve.ts';
import { answerSchema, ID, PARAMETERS, printedSchema, responseTo } from './task.ts';
import { WORDS } from './words.ts';

export const mirrorHalf = defineActivity({
  id: ID,
  codeNumber: 8,
  skill: 'turns',
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
  room,
  draw,
  hangsOnFilling: (printed) =>
    cellKind(printed) !== 'figures' || responseTo(printed) === 'colour-in',
  materials: materialsOf,
  pieces,
  messages: MESSAGES,
  words: WORDS,
});
