/// <reference types="vite/client" />
// All English messages, of the core and of the app, the pattern of a further language: `node scripts/run.mjs scripts/english-messages.ts`
// prints them as one catalogue.

export type Messages = Readonly<Record<string, string>>;

/** What says the messages of a file outside the folders of activities and of the app, by the file's path from `src`. */
const SPACES: Readonly<Record<string, string>> = {
  'activities/wording-messages.ts': 'wording',
  'activities/printed-messages.ts': 'printed',
  'editing/messages-en.ts': 'editing',
  'figures/messages-en.ts': 'figures',
  'learner/messages-en.ts': 'learner',
  'sheets/messages-en.ts': 'pages',
  'sheets/messages-adult-en.ts': 'adult',
  'sheets/messages-goals-en.ts': 'goals',
  'by-hand/messages-en.ts': 'by-hand',
  'plan/messages-en.ts': 'pairs',
  'plan/demo/messages-en.ts': 'demo',
  'words/messages-en.ts': 'refusals',
  'words/messages-reasons-en.ts': 'reasons',
  'activities/fault-messages.ts': 'faults',
};
const FOUND = import.meta.glob<{ readonly MESSAGES: Messages }>(
  ['../src/**/*messages*.ts', '!../src/web/**', '!../src/**/*.test.ts'],
  { eager: true },
);
const OF_THE_APP = import.meta.glob<{ readonly MESSAGES: Messages }>(
  ['../src/web/**/*messages-en.ts'],
  { eager: true },
);

/** What says the messages of the app that are not named after their folder. */
const APP_SPACES: Readonly<Record<string, string>> = {
  'messages-en.ts': 'app/make',
  'speaking/messages-en.ts': 'app',
  'planning/wishes-messages-en.ts': 'app/wishes',
};

/** Those of the core, by the name of what says them. Throws for a file of messages that no one says. */
export function englishMessages(): Readonly<Record<string, Messages>> {
  const spaces = Object.entries(FOUND).map(([path, { MESSAGES }]) => {
    const file = path.replace('../src/', '');
    const space = SPACES[file] ?? /^activities\/([^/]+)\/messages-en\.ts$/.exec(file)?.[1];
    if (space === undefined) throw new Error(`${file}: expected what says its messages`);
    return [space, MESSAGES] as const;
  });
  return Object.fromEntries(spaces);
}

/** Those of the app, by the name of what says them. */
export function englishMessagesOfTheApp(): Readonly<Record<string, Messages>> {
  const spaces = Object.entries(OF_THE_APP).map(([path, { MESSAGES }]) => {
    const file = path.replace('../src/web/', '');
    return [APP_SPACES[file] ?? `app/${file.split('/')[0]}`, MESSAGES] as const;
  });
  return Object.fromEntries(spaces);
}

export function main(): void {
  const all = { ...englishMessages(), ...englishMessagesOfTheApp() };
  process.stdout.write(`${JSON.stringify(all, null, 2)}\n`);
}
