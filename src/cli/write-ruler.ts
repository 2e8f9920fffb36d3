// Writing the page that shows whether a printer keeps true size.
import type { Language } from '../languages/index.ts';
import type { PaperName } from '../page/index.ts';
import { writePdf } from '../press/index.ts';
import { rulerPages } from '../sheets/index.ts';
import { SHELL_WORDS } from '../words/index.ts';
import { STANDARD_OUTPUT } from './outputs.ts';
import { readFonts } from './package-files.ts';
import { openStaging } from './staging.ts';
import { print, tell } from './terminal.ts';
import { freeName } from './write-pack.ts';

export async function writeRuler(
  paper: PaperName,
  language: Language,
  out = freeName('ruler'),
): Promise<void> {
  const pages = rulerPages(paper, language);
  if (out === STANDARD_OUTPUT) {
    await writePdf(pages, readFonts(), print);
    return;
  }
  const staging = openStaging();
  try {
    await staging.write(out, (write) => writePdf(pages, readFonts(), write));
    staging.commit();
  } finally {
    staging.abandon();
  }
  tell(SHELL_WORDS.written(out));
}
