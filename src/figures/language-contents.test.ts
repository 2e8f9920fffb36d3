// Letters and numerals of the language that is spoken come first, and nothing is lost.
import { describe, expect, it } from 'vitest';
import { CONTENT_IDS } from './contents.ts';
import { offeredIn } from './language-contents.ts';

const firstLetters = (tag: string) =>
  offeredIn(tag, CONTENT_IDS).filter((id) => /letters|capitals|small|varnamala|numerals/.test(id));

describe('what is offered in a language', () => {
  it.each([
    ['en', 'capitals'],
    ['fr-CA', 'capitals'],
    ['es', 'spanish-capitals'],
    ['es-MX', 'spanish-capitals'],
    ['hi', 'devanagari-varnamala'],
    ['ar', 'arabic-letters'],
  ] as const)('begins in %s with %s and holds all contents', (tag, first) => {
    expect(firstLetters(tag)[0]).toBe(first);
    expect([...offeredIn(tag, CONTENT_IDS)].sort()).toEqual([...CONTENT_IDS].sort());
  });

  it('leaves all others in their places', () => {
    expect(offeredIn('hi', ['colours', 'capitals', 'pictures', 'devanagari-letters'])).toEqual([
      'colours',
      'devanagari-letters',
      'pictures',
      'capitals',
    ]);
  });
});
