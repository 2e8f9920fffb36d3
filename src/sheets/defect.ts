// Defects told with their place, so that they can be played again.

/** The call's value; an error thrown inside comes out with `place` before its words. */
export function telling<T>(place: () => string, call: () => T): T {
  try {
    return call();
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    throw new Error(`${place()}: ${words}`, { cause: error });
  }
}
