// How much of each outline runs along others so near that the two lines look like one.
import type { LinePoint } from '../../figures/index.ts';

/** Two lines run alike when the sine of their angle is at most this: 27 degrees. */
const ALIKE_SINE = 0.45;

/**
 * For each line the share of its points that have a point of another line no further than `near` (cell sides)
 * that runs alike. Where lines merely cross, both can be seen.
 */
export function hiddenShares(
  lines: readonly (readonly LinePoint[])[],
  near: number,
): readonly number[] {
  const boxes = lines.map(boxOf);
  return lines.map((line, index) => {
    const hidden = line.filter((point) =>
      lines.some(
        (other, place) =>
          place !== index &&
          isIn(point, boxes[place], near) &&
          other.some((along) => runsAlong(point, along, near)),
      ),
    );
    return line.length === 0 ? 1 : hidden.length / line.length;
  });
}

interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

function boxOf(line: readonly LinePoint[]): Box {
  const [xs, ys] = [line.map(({ x }) => x), line.map(({ y }) => y)];
  return {
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  };
}

function isIn({ x, y }: LinePoint, box: Box | undefined, near: number): boolean {
  if (!box) return false;
  return (
    x >= box.left - near && x <= box.right + near && y >= box.top - near && y <= box.bottom + near
  );
}

function runsAlong(one: LinePoint, other: LinePoint, near: number): boolean {
  const dx = one.x - other.x;
  if (dx > near || dx < -near) return false;
  const dy = one.y - other.y;
  if (dx * dx + dy * dy > near * near) return false;
  const sine = one.alongX * other.alongY - one.alongY * other.alongX;
  return sine <= ALIKE_SINE && sine >= -ALIKE_SINE;
}
