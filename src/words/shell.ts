// The words of the command line, which speaks English alone: its options and its output are read by programs, too.
import { ENGLISH } from './shell-en.ts';
import type { ShellWords } from './shell-words.ts';

export function shellWords(_language: 'en'): ShellWords {
  return ENGLISH;
}
