// `samewise again`: the same sheet from the code at its foot.
import { makeSheet, readCode } from '../sheets/index.ts';
import { accepted } from './failure.ts';
import { madeOf } from './made-options.ts';
import { checkOutputs, type Outputs } from './outputs.ts';
import { writeProven } from './pack-command.ts';

export async function runAgain(code: string, outputs: Outputs): Promise<void> {
  const wishes = madeOf(outputs);
  const spec = accepted(readCode(code));
  checkOutputs(outputs);
  const sheet = accepted(makeSheet(spec));
  await writeProven({ sheets: [sheet] }, outputs, sheet.code, wishes);
}
