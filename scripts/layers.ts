// Draws the folders of src and what they import of each other: `node scripts/run.mjs scripts/layers.ts`.
import { writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { cruise, type ICruiseOptions, type ICruiseResult } from 'dependency-cruiser';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
export const PICTURE = fileURLToPath(new URL('../docs/pictures/layers.svg', import.meta.url));

/** Numbers of imports, by the folder that imports and the folder imported. */
export type Imports = ReadonlyMap<string, ReadonlyMap<string, number>>;

export async function main(): Promise<void> {
  writeFileSync(PICTURE, layersPicture(await importsInSource()));
}

/** Tests are left out: they look across. */
export async function importsInSource(): Promise<Imports> {
  const { options } = createRequire(import.meta.url)('../.dependency-cruiser.cjs') as {
    readonly options: ICruiseOptions;
  };
  const { output } = await cruise(['src'], {
    ...options,
    baseDir: ROOT,
    exclude: { path: ['\\.json$', '\\.test\\.tsx?$', '^tests/'] },
    includeOnly: '^src/',
  });
  const imports = new Map<string, Map<string, number>>();
  for (const { source, dependencies } of (output as ICruiseResult).modules) {
    const from = folderOf(source);
    const own = imports.get(from) ?? new Map<string, number>();
    imports.set(from, own);
    for (const { resolved } of dependencies) {
      const to = folderOf(resolved);
      if (to !== from) own.set(to, (own.get(to) ?? 0) + 1);
    }
  }
  return imports;
}

function folderOf(path: string): string {
  return path.split('/')[1] ?? path;
}

const SIZE = { cell: 34, left: 88, top: 104, margin: 28 };
const COLOUR = {
  paper: '#fffdf8',
  own: '#e4dccb',
  none: '#f6f1e6',
  some: '#9fc2b4',
  ink: '#2d2a26',
};

/**
 * An SVG with a row and a column for each folder, the lowest first: a dot in a row says that this folder
 * imports from that column. As nothing stands above the diagonal, every folder imports from lower ones alone.
 */
export function layersPicture(imports: Imports): string {
  const folders = rowsOf(imports).flat();
  const { cell, left, top, margin } = SIZE;
  const width = margin + left + folders.length * cell + margin;
  const height = top + folders.length * cell + margin;
  const middle = (index: number) => index * cell + cell / 2;
  const columns = folders.map((folder, index) => {
    const [x, y] = [margin + left + middle(index) + 4, top - 10];
    return `<text x="${x}" y="${y}" transform="rotate(-50 ${x} ${y})">${folder}</text>`;
  });
  const rows = folders.flatMap((folder, row) => [
    `<text x="${margin + left - 10}" y="${top + middle(row) + 5}" text-anchor="end">${folder}</text>`,
    ...folders.slice(0, row + 1).map((other, column) => {
      const [x, y] = [margin + left + column * cell, top + row * cell];
      return cellAt(x, y, row === column ? undefined : (imports.get(folder)?.get(other) ?? 0));
    }),
  ]);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" font-family="sans-serif" font-size="13" fill="${COLOUR.ink}">`,
    '<title>How often each folder of src imports from each other: only from those that stand before it</title>',
    `<rect width="${width}" height="${height}" fill="${COLOUR.paper}"/>`,
    ...legend(width - margin - 150, top + 14),
    ...columns,
    ...rows,
    '</svg>\n',
  ].join('\n');
}

/** Stands in the empty corner. */
function legend(x: number, y: number): readonly string[] {
  return [
    `<text x="${x - 14}" y="${y}">A row imports from a column</text>`,
    ...KINDS.map((kind, index) => {
      const line = y + 28 + index * 30;
      return `${dot(x, line, kind)}<text x="${x + 24}" y="${line + 4}">${kind.said}</text>`;
    }),
  ];
}

/** Counts are told by their order of size alone, so that the picture changes only where the structure does. */
const KINDS = [
  { least: 100, fill: '#3f7a68', radius: 13, said: '100 times and more' },
  { least: 10, fill: '#6fa391', radius: 10, said: '10 times and more' },
  { least: 1, fill: '#9fc2b4', radius: 6.5, said: 'less often' },
] as const;

/** `undefined`: the folder itself. */
function cellAt(x: number, y: number, count: number | undefined): string {
  const side = SIZE.cell - 3;
  const fill = count === undefined ? COLOUR.own : COLOUR.none;
  const square = `<rect x="${x}" y="${y}" width="${side}" height="${side}" rx="4" fill="${fill}"/>`;
  const kind = KINDS.find(({ least }) => (count ?? 0) >= least);
  return kind ? `${square}${dot(x + side / 2, y + side / 2, kind)}` : square;
}

function dot(x: number, y: number, { fill, radius }: (typeof KINDS)[number]): string {
  return `<circle cx="${x}" cy="${y}" r="${radius}" fill="${fill}"/>`;
}

/** From the lowest up; a folder's level is one more than the highest it imports. Throws where there is a circle. */
function rowsOf(imports: Imports): readonly (readonly string[])[] {
  const levels = new Map<string, number>();
  const levelOf = (folder: string, above: readonly string[]): number => {
    if (above.includes(folder)) throw new Error(`a circle: ${[...above, folder].join(' > ')}`);
    const known = levels.get(folder);
    if (known !== undefined) return known;
    const below = [...(imports.get(folder)?.keys() ?? [])];
    const level = Math.max(-1, ...below.map((each) => levelOf(each, [...above, folder]))) + 1;
    levels.set(folder, level);
    return level;
  };
  const folders = [...imports.keys()].sort();
  const rows: string[][] = [];
  for (const folder of folders) {
    const level = levelOf(folder, []);
    while (rows.length <= level) rows.push([]);
    rows[level]?.push(folder);
  }
  return rows;
}
