// What a child decides between in a printed task, so that a wrong choice can be noted and learned from.
import type { Figure } from '../figures/index.ts';

/** One of the things that can be chosen. */
export interface Option {
  readonly figure: Figure;
  /** Whether choosing it is right. */
  readonly isRight: boolean;
  /** The mark that it is drawn with; absent where it is not drawn by itself. */
  readonly mark?: number;
}

/**
 * One place of a task where the child decides. Drawn groups carry `mark`: a whole number from 0, each once in a task,
 * by which what was tapped on a picture of the sheet is found again.
 */
export interface Decision {
  /**
   * Absent: the child chooses among options that are drawn, each with its mark. Else the mark of the figure that it
   * decides about, as with a key: what that one was taken for is one of the options.
   */
  readonly about?: number;
  readonly options: readonly Option[];
  /** The figure that a wrong choice was taken for; absent where one does not say that two figures were mixed up. */
  readonly takenFor?: Figure;
}

/** Choosing among figures that are marked from `firstMark` on in their order; `right` are the places of the right ones. */
export function choiceAmong(
  figures: readonly Figure[],
  right: readonly number[],
  firstMark = 0,
): Decision {
  return {
    options: figures.map((figure, place) => ({
      figure,
      isRight: right.includes(place),
      mark: firstMark + place,
    })),
  };
}

/** The decision, in which a wrong choice was taken for the figure; where there is none, nothing was mixed up. */
export function takenFor(figure: Figure | undefined, decision: Decision): Decision {
  return figure ? { ...decision, takenFor: figure } : decision;
}
