// Blocks down one column after the other, and the area that is left below what stands on top.
import { type Area, type Block, type SceneNode, stackBlocks } from '../page/index.ts';

/** The blocks in order, as many as find room; a block that is higher than its column is left, and all after it. */
export function inColumns(blocks: readonly Block[], columns: readonly Area[]) {
  let rest = blocks;
  const nodes: SceneNode[] = [];
  for (const column of columns) {
    if (rest.length === 0 || (rest[0]?.heightMm ?? 0) > column.height) break;
    const stack = stackBlocks(rest, column);
    nodes.push(stack.group);
    rest = stack.rest;
  }
  return { nodes, rest };
}

/** The area without its uppermost `downMm`. */
export function below(area: Area, downMm: number): Area {
  return { ...area, top: area.top + downMm, height: area.height - downMm };
}
