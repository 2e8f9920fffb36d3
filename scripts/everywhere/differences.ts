// What is not the same in all worlds.
import type { Named } from './worlds.ts';

/** For each world that is not as the first one: the codes whose pages differ, and which packs differ as PDF. */
export function differences([first, ...others]: readonly Named[]): readonly string[] {
  if (first === undefined) return [];
  return others.flatMap(({ name, world: { sheets, pdfs } }) => {
    const said = `${name} is not as ${first.name}`;
    const codes = unlike(first.world.sheets, sheets);
    const packs = unlike(byPlace(first.world.pdfs), byPlace(pdfs)).map((at) => Number(at) + 1);
    return [
      ...(codes.length === 0
        ? []
        : [`${said}: SVG of ${codes.length} sheets, ${codes.join(', ')}`]),
      ...(packs.length === 0 ? [] : [`${said}: PDF of packs ${packs.join(', ')}`]),
    ];
  });
}

type Hashes = Readonly<Record<string, string>>;

function unlike(one: Hashes, other: Hashes): readonly string[] {
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].filter((key) => one[key] !== other[key]);
}

function byPlace(pdfs: readonly string[]): Hashes {
  return Object.fromEntries(pdfs.entries());
}
