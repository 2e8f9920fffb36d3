// The activity odd-one-out: which one does not belong?
import { defineActivity } from '../activity.ts';
import { chance } from './chance.ts';
import { decisions } from './decisions.ts';
import { draw } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limits } from './limits.ts';
import { materialsOf } from './materials.ts';
import { MESSAGES } from './messages-en.ts';
import { room } from './room.ts';
import { solve } from './solve.ts';
import { answerSchema, ID, PARAMETERS, printedSchema } from './task.ts';
import { WORDS } from './words.ts';

export const oddOneOut = defineActivity({
  id: ID,
  codeNumber: 4,
  skill: 'telling-apart',
  parameters: PARAMETERS,
  limits,
  ladder: LADDER,
  printed: printedSchema,
  answer: answerSchema,
  generate,
  solve,
  sameAnswer: (one, other) => one.odd === other.odd,
  features,
  chance,
  decisions,
  room,
  draw,
  materials: materialsOf,
  messages: MESSAGES,
  words: WORDS,
});
