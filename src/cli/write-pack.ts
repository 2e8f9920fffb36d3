// Writing a proven pack to the files that were asked for: all of them, or none.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { type MadeWishes, pagesMade } from '../by-hand/index.ts';
import { corrected, correctedPages, type Page, type Pages } from '../page/index.ts';
import { svgOf, writePdf } from '../press/index.ts';
import {
  childFileName,
  PACK_CHARACTERS,
  type Pack,
  packFileText,
  packsOfChildren,
} from '../sheets/index.ts';
import { SHELL_WORDS } from '../words/index.ts';
import { accepted, Refused } from './failure.ts';
import { languageOf, readyFor } from './language-option.ts';
import { namedPages } from './named-pages.ts';
import { measureOf, type Outputs, STANDARD_OUTPUT } from './outputs.ts';
import { readFonts } from './package-files.ts';
import { openStaging, type Staging } from './staging.ts';
import { print, showProgress, tell } from './terminal.ts';

const words = SHELL_WORDS;

/** Where a pack goes, and how its sheets come about. */
type Wanted = Outputs & { readonly wishes: MadeWishes };

/** Writes the pack; without any output to the first free name of `usual` (`pack.pdf`, `pack-2.pdf`, …). */
export async function writePack(pack: Pack, given: Wanted, usual: string): Promise<void> {
  const isNowhere = (given.out ?? given.json ?? given.svg ?? given.perChild) === undefined;
  const names = pack.sheets.map(({ child }) => child?.name ?? '').join('\n');
  await readyFor(languageOf(given), names);
  const outputs = isNowhere ? { ...given, out: freeName(usual) } : given;
  const staging = openStaging();
  try {
    const paths = await writeAside(pack, outputs, staging);
    staging.commit();
    for (const path of paths) tell(words.written(path));
  } finally {
    staging.abandon();
  }
  // Standard output cannot be taken back, so it comes last.
  if (outputs.out === STANDARD_OUTPUT) await writePdf(pagesOf(pack, outputs), readFonts(), print);
}

/** The first name of `usual.pdf`, `usual-2.pdf` and so on that nothing has yet. */
export function freeName(usual: string): string {
  let name = `${usual}.pdf`;
  for (let number = 2; existsSync(name); number++) name = `${usual}-${number}.pdf`;
  return name;
}

async function writeAside(pack: Pack, outputs: Wanted, staging: Staging): Promise<string[]> {
  const { out, json, svg, perChild } = outputs;
  if (json !== undefined) await writeJson(pack, json, staging);
  if (svg !== undefined) await writeSvgs(pack, outputs, svg, staging);
  if (perChild !== undefined) await writePerChild(pack, outputs, perChild, staging);
  const pdf = out === STANDARD_OUTPUT ? undefined : out;
  if (pdf !== undefined) {
    const fonts = readFonts();
    await staging.write(pdf, (write) => writePdf(pagesOf(pack, outputs), fonts, write));
  }
  return [pdf, json, svg, perChild].filter((path) => path !== undefined);
}

function pagesOf(pack: Pack, outputs: Wanted): Pages {
  const { answers, adultPage, single = false, wishes } = outputs;
  const language = languageOf(outputs);
  const options = { withAnswers: answers, withAdultPage: adultPage, isSingle: single, language };
  const pages = accepted(pagesMade(pack, wishes, options));
  const scaled = correctedPages(pages.pages, measureOf(outputs));
  return { ...pages, pages: countedPages(scaled, pack.sheets.length) };
}

/** Pages that show progress as they are taken; the few besides the sheets do not count. */
function* countedPages(pages: Iterable<Page>, sheets: number): Generator<Page> {
  const onPage = showProgress(words.drawing);
  let taken = 0;
  for (const page of pages) {
    yield page;
    taken += 1;
    onPage(Math.min(taken, sheets), sheets);
  }
}

async function writeJson(pack: Pack, path: string, staging: Staging): Promise<void> {
  const text = packFileText(pack);
  if (text.length > PACK_CHARACTERS) {
    const [got, max] = [text.length, PACK_CHARACTERS];
    throw new Refused({ code: 'too-big', at: path, got, max, unit: 'characters of a pack file' });
  }
  await staging.write(path, async (write) => write(Buffer.from(text)));
}

/** Numbered in the order of the group; of the name what is safe in a file's name anywhere. */
async function writePerChild(
  pack: Pack,
  outputs: Wanted,
  folder: string,
  staging: Staging,
): Promise<void> {
  staging.folder(folder);
  const fonts = readFonts();
  const packs = packsOfChildren(pack);
  for (const { child, pack: own } of packs) {
    const path = join(folder, `${childFileName(child, packs.length)}.pdf`);
    await staging.write(path, (write) => writePdf(pagesOf(own, outputs), fonts, write));
  }
}

async function writeSvgs(
  pack: Pack,
  outputs: Wanted,
  folder: string,
  staging: Staging,
): Promise<void> {
  staging.folder(folder);
  const measuredMm = measureOf(outputs);
  for (const { name, page } of namedPages(pack, outputs, languageOf(outputs))) {
    const path = join(folder, `${name}.svg`);
    await staging.write(path, async (write) =>
      write(Buffer.from(svgOf(corrected(page, measuredMm)))),
    );
  }
}
