// What a sheet shows, as a text: two sheets with the same text look alike.
import type { Sheet } from './sheet.ts';

export function shownOn({ spec, tasks }: Pick<Sheet, 'spec' | 'tasks'>): string {
  return JSON.stringify([spec.activity, tasks.map((task) => task.printed)]);
}
