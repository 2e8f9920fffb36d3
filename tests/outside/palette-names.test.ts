// The print palette against published centres of the colour names, and our measuring against theirs.
import { describe, expect, it } from 'vitest';
import { rgbDifferenceDe00 } from '../../src/palette/difference.ts';
import {
  COLOUR_NAMES,
  type ColourName,
  differenceDe00,
  type Hex,
  hexOf,
  type Sight,
} from '../../src/palette/index.ts';
import { rgbAsSeen } from '../../src/palette/sights.ts';
import { type FactRow, factNumber, readFacts } from './facts/read-facts.ts';

const centres = readFacts('colour-centres');
const surveyCentres = centres.filter((row) => row.set === 'survey');
const surfaceCentres = readFacts('surface-colours');

/** The least difference of a printed colour to the centres of each name. */
function differencesTo(rows: readonly FactRow[], name: ColourName): ReadonlyMap<string, number> {
  const least = new Map<string, number>();
  for (const { term = '', hex } of rows) {
    const difference = differenceDe00(hexOf(name), hex as Hex);
    least.set(term, Math.min(difference, least.get(term) ?? Number.POSITIVE_INFINITY));
  }
  return least;
}

function spare(rows: readonly FactRow[], name: ColourName): number {
  const differences = differencesTo(rows, name);
  const others = [...differences].filter(([term]) => term !== name).map(([, value]) => value);
  return Math.min(...others) - (differences.get(name) ?? Number.POSITIVE_INFINITY);
}

function centre(set: string, term: string): Hex {
  return centres.find((row) => row.set === set && row.term === term)?.hex as Hex;
}

describe('each printed colour is unmistakable as its name', () => {
  it('has a centre for all eleven names in both lists', () => {
    expect(surveyCentres.map((row) => row.term).sort()).toEqual([...COLOUR_NAMES].sort());
    expect(new Set(surfaceCentres.map((row) => row.term))).toEqual(new Set(COLOUR_NAMES));
  });

  // xkcd colour survey 2010. A difference of 10 is plain to see: the next name is further off by that.
  it.each(COLOUR_NAMES)(
    '%s is nearest to its own survey centre, any other is 10 further',
    (name) => {
      expect(spare(surveyCentres, name)).toBeGreaterThan(10);
    },
  );

  // Further off, shades begin that have names of their own, such as lilac; common practice, no source.
  it.each(COLOUR_NAMES)('%s lies within 13 of its own survey centre', (name) => {
    expect(differencesTo(surveyCentres, name).get(name)).toBeLessThan(13);
  });

  // Kelly 1965: surface colours, chosen on paper and not on a screen.
  it.each(COLOUR_NAMES)(
    '%s is nearest to its own surface colour, any other is 5 further',
    (name) => {
      expect(spare(surfaceCentres, name)).toBeGreaterThan(5);
    },
  );
});

describe('differences of published centres, worked out apart from this program', () => {
  const rows = readFacts('colour-centre-differences');

  it('has all 55 pairs of both sets for four sights', () => {
    expect(rows).toHaveLength(55 * 2 * 4);
  });

  it.each([...new Set(rows.map((row) => `${row.set} ${row.sight}`))])('%s', (group) => {
    for (const row of rows.filter(({ set, sight }) => `${set} ${sight}` === group)) {
      const [one, other] = [row.term1, row.term2].map((term = '') =>
        rgbAsSeen(centre(row.set ?? '', term), row.sight as Sight, 'machado-light'),
      );
      if (!one || !other) throw new Error(`no centre for ${row.term1} or ${row.term2}`);
      // Three decimals are given.
      expect(Math.abs(rgbDifferenceDe00(one, other) - factNumber(row, 'dE00'))).toBeLessThan(0.001);
    }
  });
});
