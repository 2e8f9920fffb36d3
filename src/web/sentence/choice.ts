/** One of the values among which a choice is made, by its name. */
export interface Choice {
  readonly value: string;
  readonly name: string;
  readonly note?: string;
}
