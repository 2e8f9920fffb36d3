// The activity in-every-box: which figures are in every box?
import { sameFigure } from '../../figures/index.ts';
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

export const inEveryBox = defineActivity({
  id: ID,
  codeNumber: 1,
  skill: 'rules',
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

/** The same figures in whatever order. */
function sameAnswer(one: Answer, other: Answer): boolean {
  const holds = ({ figures }: Answer, wanted: Answer) =>
    wanted.figures.every((figure) => figures.some((own) => sameFigure(own, figure)));
  return holds(one, other) && holds(other, one) && one.figures.length === other.figures.length;
}
