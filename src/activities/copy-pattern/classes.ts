// Classes of models: how many elements and colours they have, and what leaves them looking the same.
import { formOf, stanceOf } from '../../figures/index.ts';
import { isMirror, isUnmoved, placesOf, type Symmetry, symmetriesOf } from './places.ts';
import type { Model } from './task.ts';

/** What stays the same about a model however it is turned or mirrored. */
export interface PatternClass {
  /** How many places hold something. */
  readonly elements: number;
  /** How many different colours occur; ink is one. */
  readonly colours: number;
  /** `mirror`: it has a mirror line; `turn`: it looks the same turned, but has no mirror line; `none`: neither. */
  readonly symmetry: 'mirror' | 'turn' | 'none';
  /** Every turn and mirroring of the frame that leaves the model as it looks. */
  readonly kept: readonly Symmetry['name'][];
}

/** The class of a model whose cells are as many as its rows and columns ask for. */
export function classOf(model: Model): PatternClass {
  const isGrid = model.cells.length === model.rows * model.columns;
  const marks = model.cells.map((figure) => {
    if (figure === null) return '';
    const colour = figure.colour ?? 'black';
    return isGrid ? `${formOf(figure)} ${stanceOf(figure).turn} ${colour}` : colour;
  });
  const all = symmetriesOf(placesOf(isGrid ? 'grid' : 'lattice', model), model);
  const kept = all.filter((symmetry) => isUnmoved(marks, symmetry));
  const shown = marks.filter((mark) => mark !== '');
  return {
    elements: shown.length,
    colours: new Set(shown).size,
    symmetry: kept.some(isMirror) ? 'mirror' : kept.length > 0 ? 'turn' : 'none',
    kept: kept.map(({ name }) => name),
  };
}
