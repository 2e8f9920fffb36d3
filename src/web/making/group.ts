// Whom a pack is for, in a form of its own, since what is changed on a sheet asks for it too.
/** A room of children who each get the pack on sheets of their own. */
export interface Group {
  /** Names as they are written, with commas or line ends between. */
  readonly names: string;
  readonly sortedBy: 'child' | 'activity';
}
