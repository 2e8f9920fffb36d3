// `samewise again`: the same sheet from the code at its foot.
import { makeSheet, readCode } from '../sheets/index.ts';
import { accepted } from './failure.ts';
import { checkOutputs, type Outputs } from './outputs.ts';
import { writeProven } from './pack-command.ts';

export async function runAgain(code: string, outputs: Outputs): Promise<void> {
  const spec = accepted(readCode(code));
  checkOutputs(outputs, spec.page);
  const sheet = accepted(makeSheet(spec));
  await writeProven({ sheets: [sheet] }, outputs, sheet.code);
}
