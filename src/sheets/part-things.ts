// What one kind of sheet of a pack takes, in one line.
import type { Language } from '../activities/index.ts';
import { colourName } from '../figures/index.ts';
import type { PackMaterials } from './materials.ts';
import { pageWords } from './page-catalogue.ts';

export function partThings(materials: PackMaterials, language: Language): string {
  const words = pageWords(language).adult;
  const { brief } = words;
  const { stickers, crayons, tools } = materials;
  const sizes = [...new Set(stickers.map(({ diameterMm }) => diameterMm))].sort(
    (one, other) => one - other,
  );
  const ofSize = (sizeMm: number) =>
    stickers
      .filter(({ diameterMm }) => diameterMm === sizeMm)
      .map(({ count, colour }) => words.stickerEntry(count, colourName(colour, language)));
  const things = [
    ...sizes.map((sizeMm) => brief.stickers(sizeMm, brief.list(ofSize(sizeMm)))),
    ...(crayons.length > 0
      ? [words.crayons(crayons.map((colour) => colourName(colour, language)))]
      : []),
    ...tools.map((tool) => brief[tool]),
  ];
  return things.length > 0 ? brief.inParts(things) : brief.nothing;
}
