// Files of a later version say so, before their new fields seem unknown.
import type { Refusal } from '../base/index.ts';

/**
 * The refusal of a file of `format` whose `version` is a whole number above 1, the one version there is. Of a file of
 * another kind, which says its `format`, the version tells nothing.
 */
export function versionRefusal(given: unknown, format: string, what: string): Refusal | undefined {
  if (typeof given !== 'object' || given === null) return undefined;
  const said = given as { readonly format?: unknown; readonly version?: unknown };
  if (said.format !== undefined && said.format !== format) return undefined;
  const { version } = said;
  return typeof version === 'number' && Number.isInteger(version) && version > 1
    ? { code: 'unknown-version', at: what, got: version, known: [1] }
    : undefined;
}
