// Finds every answer to a printed task from its boxes alone, read as strictly and as loosely as a child might.
import { type Figure, fairlyDifferent } from '../../figures/index.ts';
import type { Findings } from '../activity.ts';
import { areAlikeUpright, areOfOneForm } from '../lying-otherwise.ts';
import { faultsOf } from './solve-faults.ts';
import { type Kind, kindsIn } from './solve-kinds.ts';
import type { Answer, Printed } from './task.ts';

/** Whether two different kinds of figure may pass for one. */
type Reading = (one: Figure, other: Figure) => boolean;

/**
 * The figures of every box, first as the page means it, then as it may be taken too: figures that are
 * hard to tell apart count as one, or turned and mirrored ones do, unless all figures are of one form, where
 * only how they lie can be meant. Readings that differ are all answers.
 */
export function solve(printed: Printed): Findings<Answer> {
  const kinds = kindsIn(printed.boxes);
  const meant = kinds.filter(({ counts }) => counts.every((count) => count > 0));
  const faults = faultsOf(printed, kinds, meant.length);
  if (meant.length === 0) return { answers: [], faults };
  const answers: (readonly Kind[])[] = [meant];
  const isDirectionMeant = areOfOneForm(kinds.map(({ figure }) => figure));
  for (const reading of isDirectionMeant ? [isHardToTell] : [isHardToTell, areAlikeUpright]) {
    const found = sharedBy(kinds, reading);
    if (!answers.some((known) => areSame(known, found))) answers.push(found);
  }
  return {
    answers: answers.map((found) => ({ figures: found.map(({ figure }) => figure) })),
    faults,
  };
}

/** The kinds that have themselves or a kind that passes for them in every box. */
function sharedBy(kinds: readonly Kind[], reading: Reading): readonly Kind[] {
  return kinds.filter((kind) => {
    const likes = kinds.filter((other) => other === kind || reading(kind.figure, other.figure));
    return kind.counts.every((_, box) => likes.some(({ counts }) => (counts[box] ?? 0) > 0));
  });
}

/** Both are parts of one list, in its order. */
function areSame(one: readonly Kind[], other: readonly Kind[]): boolean {
  return one.length === other.length && one.every((kind, index) => kind === other[index]);
}

/** To any sight that the palette serves. */
function isHardToTell(one: Figure, other: Figure): boolean {
  return !fairlyDifferent(one, other);
}
