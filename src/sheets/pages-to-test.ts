// Reading the pages of a pack in tests: their words, and what sticks out of the margin.
import { compose, IDENTITY, pathBounds, type Transform, transformPath } from '../base/index.ts';
import { type Page, type SceneNode, textWidthMm } from '../page/index.ts';

export function textsIn(nodes: readonly SceneNode[]): string[] {
  return nodes.flatMap((node) => {
    if (node.kind === 'text') return [node.text];
    return node.kind === 'group' ? textsIn(node.children) : [];
  });
}
export const words = (page: Page | undefined) => textsIn(page?.nodes ?? []).join(' ');

/** What sticks out of the margin of 12 mm less half a line, as text for the message. */
export function overEdge(page: Page): string[] {
  const isOut = (left: number, top: number, right: number, bottom: number) =>
    left < 11 || top < 11 || right > page.widthMm - 11 || bottom > page.heightMm - 11;
  const visit = (node: SceneNode, outer: Transform): string[] => {
    if (node.kind === 'group') {
      const transform = compose(outer, node.transform ?? IDENTITY);
      return node.clip ? [] : node.children.flatMap((child) => visit(child, transform));
    }
    if (node.kind === 'shape') {
      const { left, top, right, bottom } = pathBounds(transformPath(node.path, outer));
      return isOut(left, top, right, bottom) ? [`shape ${left} ${top} ${right} ${bottom}`] : [];
    }
    const width = textWidthMm(node.text, node.emMm, node.weight);
    const shift = { start: 0, middle: width / 2, end: width }[node.anchor];
    const left = outer[0] * (node.xMm - shift) + outer[4];
    const baseline = outer[3] * node.baselineMm + outer[5];
    return isOut(left, baseline - 1, left + outer[0] * width, baseline)
      ? [`text ${node.text}`]
      : [];
  };
  return page.nodes.flatMap((node) => visit(node, IDENTITY));
}
