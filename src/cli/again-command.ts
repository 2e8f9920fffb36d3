// `samewise again`: the same sheet from the code at its foot.
import { makeSheet, type Pack, readCode } from '../sheets/index.ts';
import { SHELL_WORDS } from '../words/index.ts';
import { refuseNothingToCut, withCutOptions } from './cut-options.ts';
import { accepted, Refused } from './failure.ts';
import { madeOf } from './made-options.ts';
import { checkOutputs, type Outputs } from './outputs.ts';
import { writeProven } from './pack-command.ts';

/** A sheet that a person changed so that it is not certain is written only after a yes. */
export async function runAgain(
  code: string,
  outputs: Outputs & { readonly uncertain?: boolean },
): Promise<void> {
  const wishes = madeOf(outputs);
  const spec = accepted(readCode(code));
  checkOutputs(outputs, spec.page);
  const sheet = accepted(makeSheet(spec));
  if (sheet.doubts && outputs.uncertain !== true) {
    const reason = SHELL_WORDS.askSure(sheet.doubts.map(({ task }) => task + 1));
    throw new Refused({ code: 'not-proven', at: 'sheet code', reason });
  }
  const pack = withCutOptions<Pack>({ sheets: [sheet] }, outputs);
  refuseNothingToCut(pack);
  await writeProven(pack, outputs, sheet.code, wishes);
}
