// What every screen of the app is given.
import type { Maker } from './making/maker.ts';
import type { Catalogue } from './making/protocol.ts';

export interface ScreenProps {
  readonly maker: Maker;
  /** Absent until the maker has told it. */
  readonly catalogue: Catalogue | undefined;
}
