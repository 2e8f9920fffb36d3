// Makes the same 500 sheets from their codes in four worlds and compares every byte: `npm run everywhere [every]`,
// with a number for each so manieth code alone. Exit code 1 where anything differs.
import { createHash } from 'node:crypto';
import { bundlesOfCodes } from './everywhere/codes.ts';
import { differences } from './everywhere/differences.ts';
import { EVERYWHERE, makeWorlds } from './everywhere/worlds.ts';

const SHEETS_OF_BUNDLE = 25;

export async function main([every = '1']: readonly string[]): Promise<void> {
  if (!(Number(every) >= 1))
    throw new Error(`everywhere › every: expected 1 or more, got ${every}`);
  const start = Date.now();
  const bundles = bundlesOfCodes({
    every: Number(every),
    sheetsOfBundle: SHEETS_OF_BUNDLE,
    withAdultPages: true,
  });
  const sheets = bundles.flatMap(({ codes }) => codes).length;
  console.log(`${sheets} sheets, ${bundles.length} packs`);
  const worlds = await makeWorlds(bundles, EVERYWHERE);
  for (const { name, world } of worlds) {
    const { svg, pdf } = world.bytes;
    const hash = createHash('sha256').update(JSON.stringify([world.sheets, world.pdfs]));
    console.log(`${name} (${world.written}): ${svg} bytes of SVG, ${pdf} of PDF`);
    console.log(`  all together: SHA-256 ${hash.digest('hex')}`);
  }
  const found = differences(worlds);
  for (const line of found) console.log(line);
  const seconds = Math.round((Date.now() - start) / 1000);
  console.log(
    found.length === 0 ? `the same everywhere (${seconds} s)` : `NOT the same (${seconds} s)`,
  );
  process.exitCode = found.length === 0 ? 0 : 1;
}
