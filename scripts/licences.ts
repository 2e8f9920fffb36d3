// Writes docs/licences.md from the lock file: every package of a running Samewise, with what it is licensed under.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const LOCK = fileURLToPath(new URL('../package-lock.json', import.meta.url));
export const LICENCES = fileURLToPath(new URL('../docs/licences.md', import.meta.url));

export interface Locked {
  readonly version?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly hasInstallScript?: boolean;
  readonly license?: string;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
}

export interface Lock {
  readonly packages: Readonly<
    Record<string, Locked & { readonly dependencies?: Readonly<Record<string, string>> }>
  >;
}

export interface Package {
  /** Its folder from that of the project. */
  readonly path: string;
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** Asked for by Samewise itself, not by another package. */
  readonly isDirect: boolean;
}

/** What a package says of its licence where the lock file has nothing, with where it stands. */
const SAID_ELSEWHERE: Readonly<Record<string, string>> = {
  'png-js 2.0.0': 'MIT (its file LICENSE)',
};

export function lockFile(): Lock {
  return JSON.parse(readFileSync(LOCK, 'utf8'));
}

/** Every package that comes with `npm ci --omit=dev`, those of packages included, by name. */
export function productionPackages({ packages }: Lock): readonly Package[] {
  const direct = Object.keys(packages['']?.dependencies ?? {});
  return Object.entries(packages)
    .filter(([path, { dev, devOptional }]) => path !== '' && !dev && !devOptional)
    .map(([path, { version = '', license }]) => {
      const name = path.slice(path.lastIndexOf('node_modules/') + 'node_modules/'.length);
      const licence = license ?? SAID_ELSEWHERE[`${name} ${version}`];
      if (licence === undefined) throw new Error(`${name} ${version}: no licence is known`);
      return { path, name, version, licence, isDirect: direct.includes(name) };
    })
    .sort((one, other) =>
      `${one.name} ${one.version}` < `${other.name} ${other.version}` ? -1 : 1,
    );
}

/** The document, from the lock file alone. */
export function licencesText(lock: Lock): string {
  const all = productionPackages(lock);
  const direct = all.filter(({ isDirect }) => isDirect).length;
  const rows = all.map(
    ({ name, version, licence, isDirect }) =>
      `| ${isDirect ? `**${name}**` : name} | ${version} | ${licence} |`,
  );
  return `${HEAD}
${all.length} packages come with \`npm ci --omit=dev\`: ${direct} that Samewise asks for (in bold) and ${all.length - direct} that those
need. Each package's own text of its licence lies in its folder of \`node_modules\`.

| package | version | licence |
| --- | --- | --- |
${rows.join('\n')}

${tally(all)}
`;
}

const HEAD = `# Licences

Samewise itself: MIT, in [LICENSE](../LICENSE). This page is written by \`node scripts/run.mjs scripts/licences.ts\`;
a test compares it with \`package-lock.json\`.

## Fonts and pictures

| what | of | licence |
| --- | --- | --- |
| Andika 6.101 ([where from](../assets/fonts/README.md)) | SIL International | SIL Open Font License 1.1 ([text](../assets/fonts/OFL.txt)) |
| Noto Sans, Noto Sans Hebrew, Noto Sans Devanagari, Noto Naskh Arabic, and letters of Noto Sans Arabic | the Noto Project Authors | SIL Open Font License 1.1 ([text](../assets/fonts/OFL-Noto.txt)) |
| Literata, Commissioner: the app's own lettering | the Literata Project Authors, the Commissioner Project Authors | SIL Open Font License 1.1 |
| pictures: Fluent Emoji, flat ([where from](../assets/pictures/README.md)) | Microsoft Corporation | MIT ([text](../assets/pictures/LICENSE)) |

## Packages
`;

/** How many packages each licence has, the most frequent first. */
function tally(all: readonly Package[]): string {
  const names = [...new Set(all.map(({ licence }) => licence.replace(/ \(.*/, '')))];
  const counted = names.map((name) => ({
    name,
    count: all.filter(({ licence }) => licence.replace(/ \(.*/, '') === name).length,
  }));
  const inOrder = counted.sort(
    (one, other) => other.count - one.count || (one.name < other.name ? -1 : 1),
  );
  return `${inOrder.map(({ name, count }) => `${name}: ${count}`).join(' · ')}`;
}

export function main(): void {
  writeFileSync(LICENCES, licencesText(lockFile()));
}
