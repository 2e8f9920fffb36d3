// Reads a table of published facts: lines that begin with "# " name the source, the first other line the columns.
import { readFileSync } from 'node:fs';

export type FactRow = Readonly<Record<string, string>>;

/** The rows of `name`.tsv in this folder, by column name; a defect if a row is short or long. */
export function readFacts(name: string): readonly FactRow[] {
  const text = readFileSync(new URL(`./${name}.tsv`, import.meta.url), 'utf8');
  const lines = text.split('\n').filter((line) => line !== '' && !line.startsWith('# '));
  const [columns = [], ...rows] = lines.map((line) => line.split('\t'));
  return rows.map((row) => {
    if (row.length !== columns.length) throw new Error(`facts › ${name}: ${row.join(' | ')}`);
    return Object.fromEntries(columns.map((column, index) => [column, row[index] ?? '']));
  });
}

/** The number in a column of a row; a defect if there is none. */
export function factNumber(row: FactRow, column: string): number {
  const number = Number.parseFloat(row[column] ?? '');
  if (Number.isNaN(number))
    throw new Error(`facts › ${column}: no number in ${JSON.stringify(row)}`);
  return number;
}
