// `samewise ruler`: one page with two 50 mm lines, to see whether a printer keeps true size.
import { PAPER_NAMES } from '../page/index.ts';
import { DEFAULT_PAGE } from '../sheets/index.ts';
import { type LanguageOption, languageOf, readyFor } from './language-option.ts';
import { choiceOf } from './option-values.ts';
import { STANDARD_OUTPUT } from './outputs.ts';
import { refuseUnwritableFile } from './targets.ts';

export interface RulerOptions extends LanguageOption {
  readonly paper?: string;
  readonly out?: string;
}

/** Writes the page; without a place to the first free name of `ruler.pdf`, `ruler-2.pdf` and so on. */
export async function runRuler(options: RulerOptions): Promise<void> {
  const { paper = DEFAULT_PAGE.paper, out } = options;
  const name = choiceOf(paper, '--paper', PAPER_NAMES);
  const language = languageOf(options);
  if (out !== undefined && out !== STANDARD_OUTPUT) refuseUnwritableFile(out);
  const { writeRuler } = await import('./write-ruler.ts');
  await readyFor(language);
  await writeRuler(name, language, out);
}
