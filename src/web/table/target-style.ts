// Where a target lies on the page that it is over.
import type { CSSProperties } from 'react';
import type { Box } from '../record/targets.ts';

/** In shares of the page, so that it stays at what it is of however big the page is shown. */
export function styleOf({ x, y, width, height }: Box): CSSProperties {
  const share = (mm: number, side: 'width' | 'height') => `calc(100% * ${mm} / var(--${side}-mm))`;
  return {
    insetInlineStart: share(x, 'width'),
    insetBlockStart: share(y, 'height'),
    inlineSize: share(width, 'width'),
    blockSize: share(height, 'height'),
  };
}
