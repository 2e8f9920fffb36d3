// The part of logic-solver that is used here; the package brings no types of its own.
declare module 'logic-solver' {
  /** A condition on variables; a name stands for the variable itself. */
  export type Formula = string | { readonly type: string };
  /** A whole number of which each bit is a formula. */
  export interface Bits {
    readonly bits: readonly Formula[];
  }

  export interface Solution {
    getTrueVars(): string[];
    /** True of this solution and of no other. */
    getFormula(): Formula;
  }

  class Solver {
    require(...formulas: Formula[]): void;
    forbid(...formulas: Formula[]): void;
    solve(): Solution | null;
    /** With one formula more, for this once. */
    solveAssuming(formula: Formula): Solution | null;
  }

  const Logic: {
    readonly Solver: typeof Solver;
    not(formula: Formula): Formula;
    and(...formulas: Formula[]): Formula;
    or(...formulas: Formula[]): Formula;
    xor(...formulas: Formula[]): Formula;
    implies(one: Formula, other: Formula): Formula;
    equiv(one: Formula, other: Formula): Formula;
    atMostOne(...formulas: Formula[]): Formula;
    exactlyOne(...formulas: Formula[]): Formula;
    sum(...formulas: Formula[]): Bits;
    constantBits(number: number): Bits;
    equalBits(one: Bits, other: Bits): Formula;
    lessThanOrEqual(one: Bits, other: Bits): Formula;
  };
  export default Logic;
}
