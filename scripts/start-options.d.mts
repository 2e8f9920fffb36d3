// Types of start-options.mjs, for the tests.
export interface StartOptions {
  readonly port: number | undefined;
  readonly host: string;
}
export function readStartOptions(words: readonly string[]): StartOptions;
export function readyLines(served: {
  readonly host: string;
  readonly port: number;
  readonly address: string;
}): readonly string[];
