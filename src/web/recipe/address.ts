// The recipe as the part of the address after '#', readable, so that a reload or a bookmark keeps it.
import type { Value } from '../../activities/index.ts';
import { hashOf } from '../place-names.ts';
import { type Entries, FIRST_ENTRIES, LAYOUT_CHOICES } from './entries.ts';

/** Whether the address of Make says nothing of what is to be made. */
export function isNew(hash: string): boolean {
  return hash === '' || hash === hashOf('make');
}

/** Whether the address is of Make: a recipe, or one that is still to be begun. */
export function isRecipe(hash: string): boolean {
  return isNew(hash) || hash.includes('=');
}

/** Parameters of the activity stand behind this, so that their names are free. */
const OF_THE_ACTIVITY = 'with.';

/** `activity=by-key&step=3&…&colours=red,blue&with.items=8`. */
export function writeAddress(entries: Entries): string {
  const { changes, stock: _stock, ...plain } = entries;
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(plain)) query.set(name, String(value));
  for (const [name, value] of Object.entries(changes))
    query.set(OF_THE_ACTIVITY + name, String(value));
  return query.toString().replaceAll('%2C', ',').replaceAll('%3A', ':');
}

/** The entries of an address; what it leaves out is as on a first visit, with the given seed. */
export function readAddress(hash: string, seed: number): Entries {
  const query = new URLSearchParams(hash.replace(/^#/, ''));
  const whole = (name: string, otherwise: number) =>
    query.has(name) ? Number(query.get(name)) : otherwise;
  const word = (name: 'activity' | 'paper' | 'orientation' | 'print') =>
    query.get(name) ?? FIRST_ENTRIES[name];
  return {
    activity: word('activity'),
    step: whole('step', FIRST_ENTRIES.step),
    changes: Object.fromEntries(
      [...query]
        .filter(([name]) => name.startsWith(OF_THE_ACTIVITY))
        .map(([name, value]) => [name.slice(OF_THE_ACTIVITY.length), readValue(value)]),
    ),
    ...(query.has('tasks') ? { tasks: whole('tasks', 0) } : {}),
    sheets: whole('sheets', FIRST_ENTRIES.sheets),
    seed: whole('seed', seed),
    ...(query.has('first') ? { first: whole('first', 0) } : {}),
    paper: word('paper'),
    orientation: word('orientation'),
    print: word('print'),
    ...(query.get('colours') ? { colours: query.get('colours')?.split(',') ?? [] } : {}),
    ...(query.get('pictures') ? { pictures: query.get('pictures')?.split(',') ?? [] } : {}),
    ...(query.get('onlyOwn') === 'true' ? { onlyOwn: true } : {}),
    ...(query.has('toCut') ? { toCut: (query.get('toCut') ?? '').split(',') } : {}),
    ...Object.fromEntries(
      [...LAYOUT_CHOICES, 'letters', 'ownLetters', 'made', 'quick'].flatMap((name) => {
        const value = query.get(name);
        return value ? [[name, value]] : [];
      }),
    ),
    ...(query.get('atHand') === 'true' ? { atHand: true } : {}),
    ...(query.get('changed') ? { changed: query.get('changed')?.split(',') ?? [] } : {}),
    ...(query.has('goals') ? { goals: (query.get('goals') ?? '').split(',') } : {}),
  };
}

function readValue(written: string): Value {
  if (written === 'true' || written === 'false') return written === 'true';
  return /^-?\d+(\.\d+)?$/.test(written) ? Number(written) : written;
}
