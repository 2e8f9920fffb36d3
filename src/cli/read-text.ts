// Reading a text file, or standard input, up to a limit that is checked before anything is kept.
import { closeSync, fstatSync, openSync, readSync } from 'node:fs';
import { Refused, systemReason } from './failure.ts';

const PIECE_BYTES = 1 << 16;
const STANDARD_INPUT = 0;
/** UTF-8 takes at most three bytes for a character of JavaScript. */
const BYTES_A_CHARACTER = 3;

/**
 * The text of the file at `path` (`-`: standard input); `what` names it in refusals. Whatever has no more characters
 * than `maxCharacters` is read. A file that says it is bigger than so many can be is not read at all; one that does not
 * say (a pipe) is read no further than that. Refuses besides what cannot be opened or read, folders, and what is no UTF-8.
 */
export function readText(path: string, what: string, maxCharacters: number): string {
  const maxBytes = maxCharacters * BYTES_A_CHARACTER;
  const file = path === '-' ? STANDARD_INPUT : open(path, what);
  try {
    const stat = fstatSync(file);
    if (stat.isDirectory()) throw unreadable(path, what, 'it is a folder');
    if (stat.size > maxBytes) throw tooBig(what, stat.size, maxBytes);
    return decoded(readBytes(file, path, what, maxBytes), path, what);
  } finally {
    if (file !== STANDARD_INPUT) closeSync(file);
  }
}

function open(path: string, what: string): number {
  try {
    return openSync(path, 'r');
  } catch (error) {
    throw unreadable(path, what, systemReason(error));
  }
}

function readBytes(file: number, path: string, what: string, maxBytes: number): Uint8Array {
  const pieces: Uint8Array[] = [];
  let size = 0;
  for (;;) {
    const piece = new Uint8Array(PIECE_BYTES);
    const count = readPiece(file, piece, path, what);
    if (count === 0) return Buffer.concat(pieces, size);
    size += count;
    if (size > maxBytes) throw tooBig(what, size, maxBytes);
    pieces.push(piece.subarray(0, count));
  }
}

/** Bytes read; 0 at the end, also where Windows tells the end of a pipe by an error. */
function readPiece(file: number, piece: Uint8Array, path: string, what: string): number {
  for (;;) {
    try {
      return readSync(file, piece);
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? error.code : '';
      if (code === 'EOF') return 0;
      if (code !== 'EAGAIN') throw unreadable(path, what, systemReason(error));
    }
  }
}

function decoded(bytes: Uint8Array, path: string, what: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw unreadable(path, what, 'it is not text in UTF-8');
  }
}

function unreadable(path: string, what: string, reason: string): Refused {
  return new Refused({
    code: 'unreadable',
    at: what,
    got: path,
    expected: `a file that can be read (${reason})`,
  });
}

function tooBig(what: string, got: number, max: number): Refused {
  return new Refused({ code: 'too-big', at: what, got, max, unit: 'bytes' });
}
