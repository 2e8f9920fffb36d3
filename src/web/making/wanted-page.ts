// Which page is asked for, in the numbers of the pagers.

export interface WantedPage {
  /** Sheet of the pack, or page of the adult's, 1 upward; the last one if there are fewer. */
  readonly wanted: number;
  /** Page of a sheet that takes several, 1 upward; the last one if there are fewer. */
  readonly leaf: number;
}
