// What a printed task is made of and asks for, where the facts leave it unsaid.
import { responsesOf } from './parameters.ts';
import { contentSeen } from './solve-content.ts';
import type { Content, CopyResponse, Printed } from './task.ts';

export interface Reading {
  readonly content: Content;
  readonly response: CopyResponse;
  readonly stickerMm: number;
  /** Whether a faint circle shows where each dot would go: it is filled, not drawn freely. */
  readonly hasCircles: boolean;
}

/** The sticker that is meant where none is named, diameter in mm: common practice, no source. */
const USUAL_STICKER_MM = 16;

/** The task with everything said: what is absent is told from the figures of the model. */
export function readingOf(printed: Printed): Reading {
  const content = printed.content ?? contentSeen(printed.model) ?? 'dots';
  const response = printed.response ?? responsesOf(content)[0];
  return {
    content,
    response,
    stickerMm: printed.stickerMm ?? USUAL_STICKER_MM,
    hasCircles: content === 'colours' || (content === 'dots' && response === 'colour-in'),
  };
}

/** Dots, filled cells and what is coloured in are told from empty places by their filling alone. */
export function hangsOnFilling(printed: Printed): boolean {
  const { content, response, hasCircles } = readingOf(printed);
  return hasCircles || content === 'dots' || content === 'filled-cells' || response === 'colour-in';
}
