// Files of a later version say so, before their new fields seem unknown.
import type { Refusal } from '../base/index.ts';

/** The refusal of a file whose `version` is a whole number above 1, the one version there is. */
export function versionRefusal(given: unknown, what: string): Refusal | undefined {
  if (typeof given !== 'object' || given === null || !Object.hasOwn(given, 'version')) {
    return undefined;
  }
  const { version } = given as { readonly version: unknown };
  return typeof version === 'number' && Number.isInteger(version) && version > 1
    ? { code: 'unknown-version', at: what, got: version, known: [1] }
    : undefined;
}
