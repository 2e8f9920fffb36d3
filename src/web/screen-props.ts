// What every screen of the app is given.
import type { Maker } from './making/maker.ts';
import type { Catalogue } from './making/protocol.ts';
import type { Planner } from './planning/planner.ts';

export interface ScreenProps {
  readonly maker: Maker;
  readonly planner: Planner;
  /** Absent until the maker has told it. */
  readonly catalogue: Catalogue | undefined;
}
