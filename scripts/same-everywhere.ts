// Makes the same 500 sheets from their codes in four worlds and compares every byte: `npm run everywhere [every]`,
// with a number for each so manieth code alone. Exit code 1 where anything differs.
import { createHash } from 'node:crypto';
import { ACTIVITY_IDS, activityOf } from '../src/activities/index.ts';
import { readCode } from '../src/sheets/index.ts';
import { bundlesOfCodes } from './everywhere/codes.ts';
import { differences } from './everywhere/differences.ts';
import { EVERYWHERE, makeWorlds, type Named } from './everywhere/worlds.ts';

const SHEETS_OF_BUNDLE = 25;

export async function main([every = '1']: readonly string[]): Promise<void> {
  if (!(Number.isInteger(Number(every)) && Number(every) >= 1)) {
    throw new Error(`everywhere › every: expected a whole number from 1, got ${every}`);
  }
  const start = Date.now();
  const spread = { every: Number(every), sheetsOfBundle: SHEETS_OF_BUNDLE, withAdultPages: true };
  const bundles = bundlesOfCodes(spread);
  console.log(inWords(bundles.flatMap(({ codes }) => codes)));
  const worlds = await makeWorlds(bundles, EVERYWHERE);
  for (const each of worlds) tell(each);
  const found = differences(worlds);
  for (const line of found) console.log(line);
  const said = found.length === 0 ? 'the same everywhere' : 'NOT the same everywhere';
  console.log(`${said} (${Math.round((Date.now() - start) / 1000)} s)`);
  process.exitCode = found.length === 0 ? 0 : 1;
}

/** How much of what there is the codes meet. */
function inWords(codes: readonly string[]): string {
  const specs = codes.flatMap((code) => {
    const spec = readCode(code);
    return spec.ok ? [spec.value] : [];
  });
  const activities = new Set(specs.map(({ activity }) => activity));
  const steps = new Set(specs.map(({ activity, step }) => `${activity} ${step}`));
  const all = ACTIVITY_IDS.flatMap((id) => activityOf(id).ladder).length;
  return `${specs.length} sheets: ${activities.size} of ${ACTIVITY_IDS.length} activities, ${steps.size} of ${all} steps`;
}

function tell({ name, world: { written, sheets, pdfs, bytes } }: Named): void {
  const unlike = new Set(Object.values(sheets)).size;
  const hash = createHash('sha256')
    .update(JSON.stringify([sheets, pdfs]))
    .digest('hex');
  console.log(`${name} (${written})`);
  console.log(`  ${unlike} sheets unlike each other, ${bytes.svg} bytes of SVG`);
  console.log(`  ${pdfs.length} packs, ${bytes.pdf} bytes of PDF\n  SHA-256 of all ${hash}`);
}
