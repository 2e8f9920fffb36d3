// Types of host.mjs, for the tests.
export const THIS_MACHINE: string;
export function isLoopback(host: string): boolean;
export function isHost(host: string): boolean;
export function isForThisMachine(header: string | undefined): boolean;
export function addressOf(host: string, port: number): string;
export function addressesFromElsewhere(host: string, port: number): readonly string[];
