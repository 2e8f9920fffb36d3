// The letters that mark a colour where it is printed in grey.
import type { ColourName } from './colour-names.ts';

/**
 * The same mark on every sheet, so that a child can learn it. Of the names that share a first letter, the
 * one that children name earlier keeps it alone (brown and grey come last: Pitchford & Mullen 2002,
 * Perception 31, 1349–1370); the others take their first and last letter, which are also the codes of
 * IEC 60757 (BK, BN, GY, PK; from memory). Purple has no code there and keeps its single letter.
 */
const INITIALS: Readonly<Record<ColourName, string>> = {
  red: 'R',
  orange: 'O',
  yellow: 'Y',
  green: 'G',
  blue: 'B',
  purple: 'P',
  pink: 'Pk',
  brown: 'Bn',
  grey: 'Gy',
  black: 'Bk',
  white: 'W',
};

/** The mark of a colour: one or two letters, unlike those of the ten others. */
export function initialOf(name: ColourName): string {
  return INITIALS[name];
}
