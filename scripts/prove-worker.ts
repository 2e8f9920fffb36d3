// A thread of `npm run prove`: proves each part that it is handed.
import { parentPort } from 'node:worker_threads';
import { type Part, provePart } from './prove-part.ts';

export function main(): void {
  parentPort?.on('message', (part: Part) => parentPort?.postMessage(provePart(part)));
}
