// `samewise again`: the same sheet from the code at its foot.
import { makeSheet, readCode } from '../sheets/index.ts';
import { shellWords } from '../words/index.ts';
import { accepted, Refused } from './failure.ts';
import { checkOutputs, type Outputs } from './outputs.ts';
import { writeProven } from './pack-command.ts';

/** A sheet that a person changed so that it is not certain is written only after a yes. */
export async function runAgain(
  code: string,
  outputs: Outputs & { readonly uncertain?: boolean },
): Promise<void> {
  const spec = accepted(readCode(code));
  checkOutputs(outputs);
  const sheet = accepted(makeSheet(spec));
  if (sheet.doubts && outputs.uncertain !== true) {
    const reason = shellWords('en').askSure(sheet.doubts.map(({ task }) => task + 1));
    throw new Refused({ code: 'not-proven', at: 'sheet code', reason });
  }
  await writeProven({ sheets: [sheet] }, outputs, sheet.code);
}
