// `samewise check`: every task of a pack file proven again from what is printed.
import { faultIn } from '../activities/index.ts';
import { type Check, checkPackText, PACK_CHARACTERS } from '../sheets/index.ts';
import { plainText, SHELL_WORDS } from '../words/index.ts';
import { accepted } from './failure.ts';
import { readText } from './read-text.ts';
import { print, showProgress, tell } from './terminal.ts';

const words = SHELL_WORDS;

/** The exit code: 0 where every answer is certain, 1 where one is not. */
export function runCheck(path: string): number {
  const text = readText(path, 'pack', PACK_CHARACTERS);
  const check = accepted(checkPackText(text, showProgress(words.checking)));
  for (const line of faultLines(check)) print(`${plainText(line)}\n`);
  for (const { at, code, note } of check.notes) tell(plainText(words.notes[note](at, code)));
  const { faults, tasks, sheets } = check;
  const doubts = check.notes.filter(({ note }) => note === 'changed-and-not-certain').length;
  print(
    `${faults.length > 0 ? words.someNotProven(faults.length, tasks) : words.allProven(sheets, tasks, doubts)}\n`,
  );
  return faults.length > 0 ? 1 : 0;
}

function faultLines({ faults }: Check): readonly string[] {
  return faults.map(({ at, activity, code, reason, detail }) =>
    words.fault(at, activity, code, reason, faultIn('en', detail)),
  );
}
