// The options for what is printed after each sheet to be cut out.
import { notToBeCut, type Pack, type ToCut, toCutField } from '../sheets/index.ts';
import { SHELL_WORDS } from '../words/index.ts';
import { Refused } from './failure.ts';

export interface CutOptions {
  readonly pieces?: boolean;
  readonly keyCard?: boolean;
  readonly cards?: boolean;
}

/** What was chosen before, and what the options add. */
export function withCutOptions<T extends { readonly toCut?: readonly ToCut[] }>(
  chosen: T,
  { pieces = false, keyCard = false, cards = false }: CutOptions,
): T {
  const added: readonly ToCut[] = [
    ...(pieces ? (['pieces'] as const) : []),
    ...(keyCard ? (['key-card'] as const) : []),
    ...(cards ? (['cards'] as const) : []),
  ];
  return { ...chosen, ...toCutField([...(chosen.toCut ?? []), ...added]) };
}

/** Refuses what no sheet of the pack can have. */
export function refuseNothingToCut(pack: Pack): void {
  const refusals = notToBeCut(pack).map((kind) => ({
    code: 'missing' as const,
    at: `--${kind}`,
    expected: SHELL_WORDS.sheetsToCut[kind],
  }));
  const [first, ...others] = refusals;
  if (first) throw new Refused(first, ...others);
}
