// What a folder promises that one run has taken: no other run gets it, and what a killed run left keeps nobody out.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { sentenceOf } from '../../words/index.ts';
import { Refused } from '../failure.ts';
import { THIS_MACHINE } from '../processes.ts';
import { takeFolder } from './one-run.ts';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'samewise-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

function leave(machine: string, pid: number): string {
  const name = `.samewise-${machine}-${pid}.run`;
  writeFileSync(join(folder, name), '');
  return name;
}

function refusedWith(): string {
  try {
    takeFolder(folder);
  } catch (error) {
    if (error instanceof Refused) return error.refusals.map((each) => sentenceOf(each)).join('\n');
  }
  return 'not refused';
}

const endedPid = () => spawnSync(process.execPath, ['--version']).pid;

describe('a folder that a run has taken', () => {
  it('holds a file of the run until it is given free', () => {
    const giveFree = takeFolder(folder);
    expect(readdirSync(folder)).toEqual([`.samewise-${THIS_MACHINE}-${process.pid}.run`]);
    giveFree();
    expect(readdirSync(folder)).toEqual([]);
  });

  it('is refused to another, with the process, what to do and the file; nothing of the refused one stays', () => {
    const name = leave(THIS_MACHINE, process.ppid);
    const sentence = refusedWith();
    expect(sentence).toContain(`${folder}: cannot be written`);
    expect(sentence).toContain(`process ${process.ppid} on this machine`);
    expect(sentence).toContain(join(folder, name));
    expect(readdirSync(folder)).toEqual([name]);
  });

  it('is refused where the other is of another machine, of which nothing can be known', () => {
    const name = leave('00000000', endedPid());
    expect(refusedWith()).toContain('on another machine');
    expect(readdirSync(folder)).toEqual([name]);
  });

  it('is free again where the process has ended without a word, be it of the same number', () => {
    leave(THIS_MACHINE, endedPid());
    leave(THIS_MACHINE, process.pid);
    takeFolder(folder)();
    expect(readdirSync(folder)).toEqual([]);
  });
});
