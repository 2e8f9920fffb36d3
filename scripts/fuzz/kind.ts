// What a kind of input is: how inputs of it are made, and what reads them.
import type fc from 'fast-check';

/** One way in from outside. */
export interface Kind<T = never> {
  readonly name: string;
  readonly inputs: fc.Arbitrary<T>;
  /** Done once before the first input: what the app measures once, whatever comes in. */
  readonly ready?: () => void;
  /**
   * Gives the input to the code that reads it, and goes on with what it accepts as a person would. Throws at whatever
   * must not be; what is refused in the code's own words is as it should be.
   */
  readonly meet: (input: T) => void | Promise<void>;
  /** The input in a form that can be read in a report. */
  readonly show: (input: T) => string;
}

/** A kind whose inputs only it knows, so that kinds of different inputs stand in one list. */
export interface AnyKind {
  readonly name: string;
  readonly use: <R>(run: <T>(kind: Kind<T>) => R) => R;
}

export function anyKind<T>(kind: Kind<T>): AnyKind {
  return { name: kind.name, use: (run) => run(kind) };
}
