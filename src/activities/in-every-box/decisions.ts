// What the child chooses among: every figure of every box. Which shared one a wrong one was taken for stays unsaid.
import type { Figure } from '../../figures/index.ts';
import { choiceAmong, type Decision } from '../decision.ts';
import { areAlike } from '../figure-comparison.ts';
import type { Answer, Printed } from './task.ts';

export function decisions({ boxes }: Printed, answer: Answer): readonly Decision[] {
  const all = boxes.flatMap(({ figures }) => figures);
  const isShared = (figure: Figure) => answer.figures.some((shared) => areAlike(shared, figure));
  const right = all.flatMap((figure, place) => (isShared(figure) ? [place] : []));
  return [choiceAmong(all, right)];
}
