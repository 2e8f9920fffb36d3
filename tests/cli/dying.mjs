// Loaded before the program: the disk fails at its k-th change, or the whole process dies there, or changes are counted.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

const { DISK_FAULT: how, DISK_FAULT_AT: at = '0', DISK_CHANGES_TO: countTo } = process.env;
const { openSync, writeSync, writeFileSync } = fs;
const STANDARD_STREAMS = 2;
let changes = 0;

/** Counts one change of the disk; at the k-th `halfway` happens, and then the fault. */
function change(name, halfway = () => {}) {
  changes += 1;
  if (changes !== Number(at)) return;
  if (how === 'kill') {
    halfway();
    process.kill(process.pid, 'SIGKILL');
    // The signal comes from outside: nothing of the program runs until it is there.
    for (;;);
  }
  if (how === 'full') {
    throw Object.assign(new Error(`ENOSPC: no space left, ${name}`), { code: 'ENOSPC' });
  }
}

fs.openSync = (path, flags = 'r', ...rest) => {
  if (flags !== 'r') change('open');
  return openSync(path, flags, ...rest);
};

fs.writeSync = (file, bytes, offset = 0, ...rest) => {
  if (file > STANDARD_STREAMS) {
    change('write', () => writeSync(file, bytes, offset, Math.floor((bytes.length - offset) / 2)));
  }
  return writeSync(file, bytes, offset, ...rest);
};

// A program that gives a disk fault its own answer still cleans up: removing needs no room.
const REMOVING = ['rmSync', 'unlinkSync', 'rmdirSync'];
for (const name of ['fsyncSync', 'renameSync', 'mkdirSync', 'chmodSync', ...REMOVING]) {
  const really = fs[name];
  fs[name] = (...values) => {
    if (how !== 'full' || !REMOVING.includes(name)) change(name);
    return really(...values);
  };
}

// Nothing may change the disk past what is counted here.
const UNWATCHED =
  /^(appendFile|chown|copyFile|cp|createWriteStream|fchmod|fchown|ftruncate|lchown|link|mkdtemp|mkdir|open|rename|rm|rmdir|symlink|truncate|unlink|utimes|writeFile|writev?|chmod|fsync|fdatasync)(Sync)?$/;
const watched = ['openSync', 'writeSync', 'fsyncSync', 'renameSync', 'mkdirSync', 'chmodSync'];
for (const owner of [fs, fs.promises]) {
  for (const name of Object.keys(owner)) {
    if (!UNWATCHED.test(name) || (owner === fs && [...watched, ...REMOVING].includes(name)))
      continue;
    owner[name] = () => {
      throw new Error(`${name} changes the disk unwatched`);
    };
  }
}
syncBuiltinESMExports();

if (countTo !== undefined) {
  process.on('exit', () => {
    writeFileSync(countTo, String(changes));
  });
}
