// Types of serve.mjs, for the tests.
export interface Served {
  readonly address: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}
export function serveWeb(what: {
  readonly folder: string;
  readonly port?: number;
  readonly host?: string;
}): Promise<Served>;
