// The eleven basic colour terms (Berlin & Kay 1969), the names that a child's colours go by.

export const COLOUR_NAMES = [
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'purple',
  'pink',
  'brown',
  'grey',
  'black',
  'white',
] as const;

export type ColourName = (typeof COLOUR_NAMES)[number];

/** The ten that a figure may have: white does not show on paper. */
export const FIGURE_COLOURS: readonly ColourName[] = COLOUR_NAMES.filter(
  (name) => name !== 'white',
);
