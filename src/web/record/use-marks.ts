// Where the marked figures of a sheet lie on its picture, and how wide that is shown.
import { type RefObject, useEffect, useLayoutEffect, useState } from 'react';
import type { TapTask } from '../planning/cards.ts';
import { around, type Box, within } from './targets.ts';

export interface Mark {
  /** From 0. */
  readonly task: number;
  readonly mark: number;
  /** In mm on the page, which is the unit of the picture. */
  readonly box: Box;
}

/** The marks that can be tapped, in the order of the sheet; none until the picture is there. */
export function useMarks(
  pane: RefObject<HTMLElement | null>,
  taps: readonly TapTask[],
): readonly Mark[] {
  const [marks, setMarks] = useState<readonly Mark[]>([]);
  useLayoutEffect(() => {
    const tasks = pane.current?.querySelectorAll('.sheet [data-role="task"]') ?? [];
    setMarks([...tasks].flatMap((drawn, task) => marksIn(drawn, task, taps[task])));
  }, [pane, taps]);
  return marks;
}

function marksIn(drawn: Element, task: number, taps: TapTask | undefined): readonly Mark[] {
  const wanted = [...(taps?.choices ?? []), ...(taps?.about ?? [])];
  return wanted.flatMap(({ mark }) => {
    const figure = drawn.querySelector(`[data-mark="${mark}"]`);
    const box = figure && seenBox(figure);
    return box ? [{ task, mark, box }] : [];
  });
}

/** The box of what is seen: the browser's own box of a group reaches to what is clipped away. */
export function seenBox(drawn: Element): Box | undefined {
  if (!(drawn instanceof SVGGElement)) {
    return drawn instanceof SVGGraphicsElement ? drawn.getBBox() : undefined;
  }
  const parts = [...drawn.children].flatMap((child) => seenBox(child) ?? []);
  const [, clipId] = /^url\("?#(.+?)"?\)$/.exec(drawn.getAttribute('clip-path') ?? '') ?? [];
  const clip = clipId && drawn.ownerSVGElement?.getElementById(clipId)?.firstElementChild;
  const clipBox = clip ? seenBox(clip) : undefined;
  return parts.length === 0 ? undefined : within(around(parts), clipBox);
}

/** The width of the element in CSS pixels; 0 until it is known. */
export function useWidth(place: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = place.current;
    if (element === null) return undefined;
    const watching = new ResizeObserver(() => setWidth(element.offsetWidth));
    watching.observe(element);
    return () => watching.disconnect();
  }, [place]);
  return width;
}
