// A unit of work: the pack of one child's week, made and proven from its codes and written whole.
import { join } from 'node:path';
import { correctedPages, type Page } from '../../page/index.ts';
import { writePdf } from '../../press/index.ts';
import {
  type Pack,
  packFileText,
  packOfCodes,
  packPages,
  type SheetChild,
} from '../../sheets/index.ts';
import { accepted } from '../failure.ts';
import type { Fonts } from '../package-files.ts';
import { type Fill, openStaging } from '../staging.ts';
import type { Answer, FileKind, PlannedWeek, YearJob } from './job.ts';
import { folderOf, weekFileName } from './places.ts';
import { addSums, newHash, type Sum } from './sums.ts';

/** Refuses what cannot be made or written; then nothing of the week is there. */
export async function makeWeek(
  job: YearJob,
  fonts: Fonts,
  onSheet: SheetChild,
  { week, sheets }: PlannedWeek,
): Promise<Answer> {
  const plain = accepted(packOfCodes(sheets.map(({ code }) => code)));
  const pack = { ...plain, sheets: plain.sheets.map((sheet) => ({ ...sheet, child: onSheet })) };
  const folder = folderOf(job.folder, onSheet);
  const staging = openStaging();
  const sums: Sum[] = [];
  try {
    for (const kind of job.files) {
      const name = weekFileName(week, kind);
      const hash = newHash();
      await staging.write(join(folder, name), async (write) => {
        await fillAs(kind, { job, fonts, pack }, (piece) => {
          hash.update(piece);
          write(piece);
        });
      });
      sums.push({ name, sha256: hash.digest('hex') });
    }
    addSums(folder, sums);
    staging.commit();
    return { kind: 'made' };
  } finally {
    staging.abandon();
  }
}

interface Written {
  readonly job: YearJob;
  readonly fonts: Fonts;
  readonly pack: Pack;
}

async function fillAs(
  kind: FileKind,
  { job, fonts, pack }: Written,
  write: Parameters<Fill>[0],
): Promise<void> {
  switch (kind) {
    case 'json':
      return write(Buffer.from(packFileText(pack)));
    case 'pdf':
      return writePdf(pagesOf(job, pack), fonts, write);
  }
}

function pagesOf(job: YearJob, pack: Pack) {
  const { answers, adultPage, single, language, measuredMm } = job;
  const pages = packPages(pack, {
    withAnswers: answers,
    withAdultPage: adultPage,
    // One child has nobody to be compared with.
    withMarkingTable: false,
    isSingle: single,
    language,
  });
  const scaled: Iterable<Page> = correctedPages(pages.pages, measuredMm);
  return { ...pages, pages: scaled };
}
