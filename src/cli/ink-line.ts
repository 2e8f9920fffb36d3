// How much ink the sheets of a pack take, for the person who prints them.
import { coverageOf } from '../press/index.ts';
import { type Pack, pagesInInks, type Sheet } from '../sheets/index.ts';
import { SHELL_WORDS } from '../words/index.ts';

/** Sheets of one kind take much the same ink, so that a long pack is told by so many of its sheets. */
const LOOKED_AT = 12;

/** The mean over the pack's sheets, in the ink that they are printed in and in the other one. */
export function inkLine({ sheets }: Pack): string {
  const pages = spread(sheets).map((sheet) => pagesInInks(sheet));
  const full = mean(pages.map((page) => coverageOf(page.full)));
  const saving = mean(pages.map((page) => coverageOf(page.saving)));
  const { inked } = SHELL_WORDS;
  return sheets[0]?.spec.ink === 'saving'
    ? inked(saving, 'saving', full)
    : inked(full, 'full', saving);
}

/** The sheets, or so many of them, of each kind as many as its share: children of a group have the same kinds in turn. */
function spread(sheets: readonly Sheet[]): readonly Sheet[] {
  if (sheets.length <= LOOKED_AT) return sheets;
  const kindOf = ({ spec }: Sheet) => `${spec.activity} ${spec.step}`;
  const byKind = [...sheets].sort((one, other) =>
    kindOf(one) < kindOf(other) ? -1 : Number(kindOf(one) > kindOf(other)),
  );
  return Array.from({ length: LOOKED_AT }, (_, place) => {
    return byKind[Math.floor((place * sheets.length) / LOOKED_AT)];
  }).filter((sheet) => sheet !== undefined);
}

function mean(shares: readonly number[]): number {
  return shares.reduce((sum, share) => sum + share, 0) / Math.max(1, shares.length);
}
