// Help and complaints go the way of all that is said.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { expect, test } from 'vitest';
import { PROGRAM } from './program.ts';

test.each([['--help'], ['pack', '--help'], ['year', '--help']])(
  'a reader who has read enough of `%s %s` is no fault',
  async (...words) => {
    const child = spawn(process.execPath, [PROGRAM, ...words.filter(Boolean)]);
    const told: Buffer[] = [];
    child.stderr.on('data', (piece: Buffer) => told.push(piece));
    child.stdout.destroy();
    const [code] = await once(child, 'close');
    expect(Buffer.concat(told).toString('utf8')).toBe('');
    expect(code).toBe(0);
  },
);
