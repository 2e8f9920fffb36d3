// The part of logic-solver that is used here; the package brings no types of its own.
declare module 'logic-solver' {
  /** A condition on variables; a name stands for the variable itself. */
  export type Formula = string | { readonly type: string };

  export interface Solution {
    getTrueVars(): string[];
    /** True of this solution and of no other. */
    getFormula(): Formula;
  }

  class Solver {
    require(...formulas: Formula[]): void;
    forbid(...formulas: Formula[]): void;
    solve(): Solution | null;
  }

  const Logic: {
    readonly Solver: typeof Solver;
    or(...formulas: Formula[]): Formula;
    exactlyOne(...formulas: Formula[]): Formula;
  };
  export default Logic;
}
