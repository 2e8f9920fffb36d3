// A pack of sheets that are made again from their codes.
import { accept, type Refusal, type Result, refuse, told } from '../base/index.ts';
import { readCode } from './code.ts';
import type { OnProgress, Pack } from './pack.ts';
import { refusalsUnder } from './path-text.ts';
import { makeSheet, type Sheet } from './sheet.ts';
import type { SheetSpec } from './sheet-spec.ts';

/**
 * The sheets of the codes in their order, each as often as its code is listed. Refuses, before any is
 * made, every code that cannot be read, by its place among them where there are several; and none.
 */
export function packOfCodes(
  codes: readonly string[],
  onProgress: OnProgress = () => {},
): Result<Pack> {
  if (codes.length === 0) {
    return refuse({
      code: 'missing',
      at: 'sheet codes',
      expected: told('reasons', 'expected.codes'),
    });
  }
  const specs = allRead(codes);
  if (!specs.ok) return specs;
  const sheets: Sheet[] = [];
  onProgress(0, codes.length);
  for (const [index, spec] of specs.value.entries()) {
    const made = makeSheet(spec);
    if (!made.ok) return refuse(...placed(made.refusals, index, codes.length));
    sheets.push(made.value);
    onProgress(sheets.length, codes.length);
  }
  return accept({ sheets });
}

function allRead(codes: readonly string[]): Result<readonly SheetSpec[]> {
  const specs: SheetSpec[] = [];
  const refusals: Refusal[] = [];
  for (const [index, code] of codes.entries()) {
    const read = readCode(code);
    if (read.ok) specs.push(read.value);
    else refusals.push(...placed(read.refusals, index, codes.length));
  }
  return refusals.length === 0 ? accept(specs) : refuse(...refusals);
}

function placed(refusals: readonly Refusal[], index: number, all: number): readonly Refusal[] {
  return all === 1 ? refusals : refusalsUnder(`sheet ${index + 1}`, refusals);
}
