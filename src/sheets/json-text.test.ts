// What reading JSON from strangers promises: a limit before parsing, no depth, no prototypes, the place of a fault.

import { describe, expect, it } from 'vitest';
import { told } from '../base/index.ts';
import { readJson } from './json-text.ts';

const read = (text: string) => readJson(text, 'recipe', { characters: 200_000 });
const refusalOf = (text: string) => {
  const result = read(text);
  return result.ok ? undefined : result.refusals[0];
};

describe('JSON from a file', () => {
  it('is read, a byte order mark left aside', () => {
    expect(read('{"a":[1,null]}')).toEqual({ ok: true, value: { a: [1, null] } });
    expect(read('\ufeff[]')).toEqual({ ok: true, value: [] });
  });

  it('that is too long is refused before it is parsed', () => {
    expect(refusalOf('x'.repeat(200_001))).toMatchObject({ code: 'too-big', got: 200_001 });
  });

  it.each(['', '   ', '{', '{"a":}', 'NaN', '[1,]', "{'a':1}"])(
    '%j is refused as no JSON',
    (text) => {
      expect(refusalOf(text)).toMatchObject({
        code: 'unreadable',
        expected: { key: expect.stringMatching(/^expected\.json/) },
      });
    },
  );

  it('names the line and column of a fault, or tells it in the words of the engine', () => {
    expect(refusalOf('{\n  "a": 1\n  "b": 2\n}')?.at).toBe('recipe › line 3, column 3');
    expect(refusalOf('{\n  "a": oops\n}')).toMatchObject({
      expected: { values: { fault: expect.stringContaining('Unexpected token') } },
    });
  });

  it('nested a hundred thousand deep is refused without a fall', () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`;
    expect(refusalOf(deep)?.code).toMatch(/too-big|unreadable/);
    expect(refusalOf(`${'{"a":'.repeat(30)}1${'}'.repeat(30)}`)).toMatchObject({
      code: 'too-big',
      unit: told('reasons', 'amount.levels'),
    });
  });

  it('with a key that reaches into prototypes is refused, with its place, and reaches nothing', () => {
    const hostile = '{"parts":[{"values":{"__proto__":{"polluted":true}}}]}';
    expect(refusalOf(hostile)).toMatchObject({
      code: 'unknown-field',
      at: 'recipe › parts[0].values',
      got: '__proto__',
    });
    expect('polluted' in {}).toBe(false);
  });
});
