// What the order of the figures gives away: the one that breaks a row which else repeats.
import type { Figure } from '../../figures/index.ts';
import { lookOf, type Trait } from './solve-looks.ts';

/** Lengths of the part that repeats; longer ones are not seen in so few figures. */
const PERIODS = [2, 3] as const;

/**
 * The places of figures that alone break a pattern: in the traits together, all others repeat one part over and
 * over, such as red blue red blue blue. A part of one look is no pattern.
 */
export function breakersOf(
  figures: readonly Figure[],
  traits: readonly Trait[],
): readonly number[] {
  const looks = figures.map((figure) => traits.map((trait) => lookOf(figure, trait)).join('|'));
  return PERIODS.flatMap((period) => {
    const part = Array.from({ length: period }, (_, start) =>
      commonest(looks.filter((_look, place) => place % period === start)),
    );
    if (part.includes(undefined) || new Set(part).size === 1) return [];
    const breaking = looks.flatMap((look, place) => (look === part[place % period] ? [] : [place]));
    return breaking.length === 1 ? breaking : [];
  });
}

/** The look that most have; none where no look has more than half. */
function commonest(looks: readonly string[]): string | undefined {
  return looks.find((look) => 2 * looks.filter((other) => other === look).length > looks.length);
}
