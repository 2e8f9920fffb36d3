// One code, one sheet: the same bytes in Node and in Chromium, in two time zones and two languages of the machine.
import { beforeAll, expect, test } from 'vitest';
import { bundlesOfCodes } from '../../scripts/everywhere/codes.ts';
import { differences } from '../../scripts/everywhere/differences.ts';
import { CROSSWISE, makeWorlds, type Named } from '../../scripts/everywhere/worlds.ts';
import { ACTIVITY_IDS } from '../../src/activities/index.ts';
import { LANGUAGES } from '../../src/languages/index.ts';
import { readCode, type SheetSpec } from '../../src/sheets/index.ts';

/** A part of the 500 codes of `npm run everywhere`. */
const bundles = bundlesOfCodes({ every: 13, sheetsOfBundle: 10, withAdultPages: false });
const codes = bundles.flatMap((bundle) => bundle.codes);

let worlds: readonly Named[];
beforeAll(async () => {
  worlds = await makeWorlds(bundles, CROSSWISE);
}, 600_000);

test('the codes are of every activity, many steps and contents, both papers, prints and hands, all languages', () => {
  const specs = codes.map(specOf);
  const kinds = (kindOf: (spec: SheetSpec) => unknown) => new Set(specs.map(kindOf)).size;
  expect(new Set(codes).size).toBe(39);
  for (const activity of ACTIVITY_IDS) {
    expect(specs.filter((spec) => spec.activity === activity).length, activity).toBeGreaterThan(1);
  }
  expect(kinds(({ step }) => step)).toBeGreaterThan(8);
  expect(kinds(({ values }) => values.content)).toBeGreaterThan(5);
  expect(kinds(({ page }) => page.paper)).toBe(2);
  expect(kinds(({ print }) => print)).toBe(2);
  expect(kinds(({ hand }) => hand)).toBe(2);
  expect(bundles.map(({ language }) => language)).toEqual(LANGUAGES);
});

test('every sheet is the same, byte for byte, as pages and in a PDF', () => {
  expect(worlds).toHaveLength(2);
  expect(differences(worlds)).toEqual([]);
  for (const { name, world } of worlds) {
    expect(Object.keys(world.sheets), name).toEqual(codes);
    // Different sheets give different bytes: the hashes are of what they should be of.
    expect(new Set(Object.values(world.sheets)).size, name).toBe(codes.length);
    expect(new Set(world.pdfs).size, name).toBe(bundles.length);
  }
});

test('the worlds are places that write numbers and moments differently', () => {
  expect(new Set(worlds.map(({ world }) => world.written)).size).toBe(2);
});

test('one sheet that differs, one too few or one PDF too few is told with its place', () => {
  const [first, second] = worlds as [Named, Named];
  const { sheets, pdfs } = second.world;
  const [code = '', next = ''] = codes;
  const { [next]: _, ...fewer } = { ...sheets, [code]: 'another' };
  const changed = { ...second.world, sheets: fewer, pdfs: pdfs.slice(0, -1) };
  expect(differences([first, { ...second, world: changed }])).toEqual([
    `${second.name} is not as ${first.name}: SVG of 2 sheets, ${code}, ${next}`,
    `${second.name} is not as ${first.name}: PDF of packs ${bundles.length}`,
  ]);
});

function specOf(code: string): SheetSpec {
  const spec = readCode(code);
  if (!spec.ok) throw new Error(`${code}: ${JSON.stringify(spec.refusals)}`);
  return spec.value;
}
