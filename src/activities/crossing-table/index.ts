// The activity crossing-table: put each in its row and column.
import { sameFigure } from '../../figures/index.ts';
import { defineActivity } from '../activity.ts';
import { chance } from './chance.ts';
import { draw, room } from './draw.ts';
import { features } from './features.ts';
import { generate } from './generate.ts';
import { LADDER } from './ladder.ts';
import { limitsOf } from './limits.ts';
import { materialsOf } from './materials.ts';
import { MESSAGES } from './messages-en.ts';
import { pieces } from './pieces.ts';
import { solve } from './solve.ts';
import { type Answer, answerSchema, ID, PARAMETERS, printedSchema } from './task.ts';
import { WORDS } from './words.ts';

export const crossingTable = defineActivity({
  id: ID,
  codeNumber: 16,
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
  room,
  draw,
  materials: materialsOf,
  pieces,
  messages: MESSAGES,
  words: WORDS,
});

function sameAnswer({ figures }: Answer, other: Answer): boolean {
  return (
    figures.length === other.figures.length &&
    figures.every((figure, place) => sameFigure(figure, other.figures[place] ?? {}))
  );
}
