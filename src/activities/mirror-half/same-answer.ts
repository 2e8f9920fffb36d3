// Whether two answers finish the picture alike.
import { sameFigure } from '../../figures/index.ts';
import type { Answer } from './task.ts';

export function sameAnswer(one: Answer, other: Answer): boolean {
  if ('choice' in one || 'choice' in other) {
    return 'choice' in one && 'choice' in other && one.choice === other.choice;
  }
  return (
    one.cells.length === other.cells.length &&
    one.cells.every((cell, place) => {
      const beside = other.cells[place] ?? null;
      return cell === null || beside === null ? cell === beside : sameFigure(cell, beside);
    })
  );
}
