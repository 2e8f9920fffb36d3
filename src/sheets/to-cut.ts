// What can be printed besides a sheet to be cut out: further pages about the same sheet, which keeps its code.

/** In the order in which the pages follow their sheet. */
export const TO_CUT = ['cards', 'key-card', 'pieces'] as const;
/** Every task as a card of its own; the key or the model as a card; the figures of the answer as pieces. */
export type ToCut = (typeof TO_CUT)[number];

/** The choices as a pack holds them: each once, in one order; no field for none. */
export function toCutField(chosen: readonly ToCut[] | undefined): {
  readonly toCut?: readonly ToCut[];
} {
  const wanted = TO_CUT.filter((kind) => chosen?.includes(kind));
  return wanted.length > 0 ? { toCut: wanted } : {};
}
