// Directions of a space that are upright and one side, whatever the form: no figure is another's left-right image.
import { type Axis, formOf, mirrorTurnDeg, type Space } from '../figures/index.ts';

/** A crescent opens to the side where other shapes point up: a quarter turn more, and left is left again. */
export function withLevelDirections(space: Space): Space {
  const quarter = mirrorTurnDeg(formOf(space.base)) === 180 ? 90 : 0;
  if (quarter === 0) return space;
  const axes = space.axes.map((axis): Axis => {
    if (axis.attribute !== 'turn') return axis;
    return {
      ...axis,
      values: axis.values.map(({ turn = 0 }) => ({ turn: (turn + quarter) % 360 })),
    };
  });
  return { ...space, axes };
}
