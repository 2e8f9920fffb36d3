// Where on the drawn page the places and the boxes of a sheet lie that is being changed.
import { type RefObject, useLayoutEffect, useState } from 'react';
import type { Spot } from '../../editing/index.ts';
import { around, type Box } from '../record/targets.ts';
import { seenBox } from '../record/use-marks.ts';
import type { HeldTask } from './change-talk.ts';

export interface ChangeTarget extends Spot {
  readonly box: Box;
}

export interface WholeTarget {
  readonly task: number;
  /** Among the wholes of its task. */
  readonly index: number;
  /** All of it, in mm on the page. */
  readonly frame: Box;
}

/** Where the figures and the empty cells lie, in mm on the page; several parts of one place count as one. */
export function usePlaces(
  pane: RefObject<HTMLElement | null>,
  svg: string,
  tasks: readonly HeldTask[],
): readonly ChangeTarget[] {
  return useDrawn(pane, svg, (drawn, task) => {
    const boxes = new Map<number, Box>();
    for (const figure of drawn.querySelectorAll('[data-place]')) {
      const box = seenBox(figure);
      const place = Number(figure.getAttribute('data-place'));
      const before = boxes.get(place);
      if (box) boxes.set(place, before ? around([before, box]) : box);
    }
    for (const { place, role, nth, row, column, rows, columns } of tasks[task]?.cells ?? []) {
      const box = partOf(drawn, role, nth);
      if (!box) continue;
      const [width, height] = [box.width / columns, box.height / rows];
      boxes.set(place, { x: box.x + column * width, y: box.y + row * height, width, height });
    }
    return [...boxes].map(([place, box]) => ({ task, place, box }));
  });
}

/** Where the boxes and the like lie, in mm on the page. */
export function useWholes(
  pane: RefObject<HTMLElement | null>,
  svg: string,
  tasks: readonly HeldTask[],
): readonly WholeTarget[] {
  return useDrawn(pane, svg, (drawn, task) =>
    (tasks[task]?.wholes ?? []).flatMap(({ role, nth }, index) => {
      const frame = partOf(drawn, role, nth);
      return frame ? [{ task, index, frame }] : [];
    }),
  );
}

function partOf(drawn: Element, role: string, nth: number): Box | undefined {
  const part = drawn.querySelectorAll(`[data-role="${role}"]`)[nth];
  return part && (seenBox(part) ?? undefined);
}

/** What is found in each drawn task; another drawing is measured anew. */
function useDrawn<T>(
  pane: RefObject<HTMLElement | null>,
  svg: string,
  find: (drawn: Element, task: number) => readonly T[],
): readonly T[] {
  const [found, setFound] = useState<readonly T[]>([]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is found hangs on the drawing alone
  useLayoutEffect(() => {
    const tasks = pane.current?.querySelectorAll('.sheet [data-role="task"]') ?? [];
    setFound([...tasks].flatMap((drawn, task) => find(drawn, task)));
  }, [pane, svg]);
  return found;
}
