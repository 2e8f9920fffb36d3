// What a list of children promises: a child a line, as people and spreadsheets write it, and each slip told by its line.
import { describe, expect, it } from 'vitest';
import { readList } from './children.ts';

function childrenIn(text: string) {
  const read = readList(text);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value.map(({ child: { nickname, birthMonth }, step }) => [
    nickname,
    birthMonth,
    step,
  ]);
}

describe('a list of children', () => {
  it('has a name a line and, behind a comma, a semicolon or a tab, a month of birth or a step', () => {
    const text = '\ufeff# our group\nWren, 2022-05\r\nMoss;step 3\rFern\t STEP 12 \n\nليلى\n';
    expect(childrenIn(text)).toEqual([
      ['Wren', '2022-05', undefined],
      ['Moss', undefined, 3],
      ['Fern', undefined, 12],
      ['ليلى', undefined, undefined],
    ]);
  });

  it('may have empty cells behind, as a spreadsheet writes them', () => {
    expect(childrenIn('Wren;2022-05;\nMoss,,\nFern\t\t\n')).toEqual([
      ['Wren', '2022-05', undefined],
      ['Moss', undefined, undefined],
      ['Fern', undefined, undefined],
    ]);
  });

  it('may have a comma within a name, as long as a month or a step stands last', () => {
    expect(childrenIn('O’Brien, Zoë, 2022-05')).toEqual([['O’Brien, Zoë', '2022-05', undefined]]);
  });

  it.each([
    ['Wren\nMoss, 2022-05, step 3', '2022-05, step 3'],
    ['Wren\nMoss, step 3, 2022-05', 'step 3, 2022-05'],
    ['Wren\nMoss, 4 years', '4 years'],
    ['Wren\nMoss, step 0', 'step 0'],
  ])('refuses %j by its line, with what came', (text, got) => {
    expect(readList(text)).toMatchObject({
      refusals: [{ code: 'unreadable', at: 'list of children › line 2', got }],
    });
  });

  it('keeps the sheets of a child when others come or go: its id is its name and which of that name it is', () => {
    const idsIn = (text: string) => {
      const read = readList(text);
      return read.ok ? read.value.map(({ child }) => child.id) : [];
    };
    expect(idsIn('Wren\nMoss\nWren')).toEqual(['1 Wren', '1 Moss', '2 Wren']);
    expect(idsIn('Moss\nWren')).toEqual(['1 Moss', '1 Wren']);
  });
});
