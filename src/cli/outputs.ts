// Where a pack is to go, and whether it can go there; asked before anything is made.
import { resolve } from 'node:path';
import { measureRefusals, type PageChoice, printedPaperOf, readMeasure } from '../page/index.ts';
import { printedPapers } from '../sheets/index.ts';
import type { CutOptions } from './cut-options.ts';
import { accepted, Refused } from './failure.ts';
import { type LanguageOption, languageOf } from './language-option.ts';
import type { MadeOptions } from './made-options.ts';
import { refuseUnwritableFile, refuseUnwritableFolder } from './targets.ts';

/** Where a pack goes; `out` may be `-`, standard output. */
export interface Outputs extends CutOptions, MadeOptions, LanguageOption {
  readonly out?: string;
  readonly json?: string;
  readonly svg?: string;
  /** A folder for one PDF for each child of a group. */
  readonly perChild?: string;
  /** Sheets of A5 on pages of their own, not two on one A4. */
  readonly single?: boolean;
  /** What the 50 mm line measured on the printer that this is for, as it was typed. */
  readonly measured?: string;
  readonly answers: boolean;
  readonly adultPage: boolean;
}

export const STANDARD_OUTPUT = '-';
const MEASURED = '--measured';

/**
 * Refuses places that nothing can be written to, pages of their own for sheets that have them anyway, a measure that
 * sheets with this page cannot be corrected for, and a language that there is not, so that no long pack is made in vain.
 */
export function checkOutputs(outputs: Outputs, page: PageChoice): void {
  const { out, json, svg, perChild } = outputs;
  refuseSingle(outputs, page);
  refuseMeasure(outputs, page);
  languageOf(outputs);
  refuseSamePlace([out, json, svg, perChild]);
  if (out !== undefined && out !== STANDARD_OUTPUT) refuseUnwritableFile(out);
  if (json !== undefined) refuseUnwritableFile(json);
  if (svg !== undefined) refuseUnwritableFolder(svg);
  if (perChild !== undefined) refuseUnwritableFolder(perChild);
}

/** Sheets of another paper have pages of their own in any case; who asks for it may mean another paper. */
function refuseSingle({ single = false }: Outputs, { paper }: PageChoice): void {
  if (!single || printedPaperOf(paper) !== paper) return;
  const expected = 'sheets of A5 (--paper A5), which else come two on one A4';
  throw new Refused({ code: 'unreadable', at: '--single', got: paper, expected });
}

/** What the 50 mm line measured, in mm; absent: pages are printed as they are. */
export function measureOf({ measured }: Outputs): number | undefined {
  return measured === undefined ? undefined : accepted(readMeasure(measured, MEASURED));
}

function refuseMeasure(outputs: Outputs, page: PageChoice): void {
  const measuredMm = measureOf(outputs);
  if (measuredMm === undefined) return;
  const refusals = measureRefusals(printedPapers([page], outputs.single), measuredMm, MEASURED);
  if (refusals.length > 0) throw new Refused(...refusals);
}

function refuseSamePlace(given: readonly (string | undefined)[]): void {
  const paths = given.flatMap((path) => (path === undefined ? [] : [resolve(path)]));
  const twice = paths.find((path, index) => paths.indexOf(path) !== index);
  if (twice !== undefined) {
    const reason = 'two of --out, --json, --svg and --per-child name the same place';
    throw new Refused({ code: 'unwritable', at: twice, reason });
  }
}
