// Letters without vowels: none is left, and enough others are.
import { describe, expect, it } from 'vitest';
import { CONTENT_IDS, formsOf } from './contents.ts';
import { mostForms } from './likeness.ts';
import { withoutVowels } from './pools.ts';

describe('withoutVowels', () => {
  it('keeps all that is no vowel, and leaves letters enough for a task', () => {
    expect(
      withoutVowels(['capital-A', 'capital-B', 'small-y', 'letter-я', 'letter-Ω', 'star']),
    ).toEqual(['capital-B', 'star']);
    for (const content of CONTENT_IDS.filter((id) => /letters|capitals|small/.test(id))) {
      expect(mostForms(withoutVowels(formsOf(content))), content).toBeGreaterThanOrEqual(7);
    }
  });
});
