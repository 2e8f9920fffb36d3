// `samewise again`: the same sheet from the code at its foot.
import { makeSheet, type Pack, readCode } from '../sheets/index.ts';
import { refuseNothingToCut, withCutOptions } from './cut-options.ts';
import { accepted } from './failure.ts';
import { madeOf } from './made-options.ts';
import { checkOutputs, type Outputs } from './outputs.ts';
import { writeProven } from './pack-command.ts';

export async function runAgain(code: string, outputs: Outputs): Promise<void> {
  const wishes = madeOf(outputs);
  const spec = accepted(readCode(code));
  checkOutputs(outputs, spec.page);
  const sheet = accepted(makeSheet(spec));
  const pack = withCutOptions<Pack>({ sheets: [sheet] }, outputs);
  refuseNothingToCut(pack);
  await writeProven(pack, outputs, sheet.code, wishes);
}
