// Where a pack is to go, and whether it can go there; asked before anything is made.
import { resolve } from 'node:path';
import { Refused } from './failure.ts';
import type { MadeOptions } from './made-options.ts';
import { refuseUnwritableFile, refuseUnwritableFolder } from './targets.ts';

/** Where a pack goes; `out` may be `-`, standard output. */
export interface Outputs extends MadeOptions {
  readonly out?: string;
  readonly json?: string;
  readonly svg?: string;
  /** A folder for one PDF for each child of a group. */
  readonly perChild?: string;
  readonly answers: boolean;
  readonly adultPage: boolean;
}

export const STANDARD_OUTPUT = '-';

/** Refuses places that nothing can be written to, so that no long pack is made in vain. */
export function checkOutputs({ out, json, svg, perChild }: Outputs): void {
  refuseSamePlace([out, json, svg, perChild]);
  if (out !== undefined && out !== STANDARD_OUTPUT) refuseUnwritableFile(out);
  if (json !== undefined) refuseUnwritableFile(json);
  if (svg !== undefined) refuseUnwritableFolder(svg);
  if (perChild !== undefined) refuseUnwritableFolder(perChild);
}

function refuseSamePlace(given: readonly (string | undefined)[]): void {
  const paths = given.flatMap((path) => (path === undefined ? [] : [resolve(path)]));
  const twice = paths.find((path, index) => paths.indexOf(path) !== index);
  if (twice !== undefined) {
    const reason = 'two of --out, --json, --svg and --per-child name the same place';
    throw new Refused({ code: 'unwritable', at: twice, reason });
  }
}
