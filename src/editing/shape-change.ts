// Adding and taking away: a box, a figure, an entry of a key. Changes the form of what is printed.
import { listsIn, type Path, valueAt, withValue } from './places.ts';

export interface ShapeChange {
  readonly kind: 'add' | 'take';
  /** Which of the task's lists, by its index among them. */
  readonly list: number;
  /** The item that is copied to stand behind itself, or that goes. */
  readonly at: number;
  /** Whether lists beside it of the same length, such as where its figures stand, change with it. */
  readonly together: boolean;
}

/** The changed facts; `undefined` where there is no such list or item. */
export function withShape(printed: unknown, change: ShapeChange): unknown {
  const list = listsIn(printed)[change.list];
  if (!list || change.at >= list.length) return undefined;
  return pathsOf(printed, list.path, change.together).reduce<unknown>((facts, path) => {
    const items = valueAt(facts, path) as readonly unknown[];
    const behind = items.slice(change.at + 1);
    const kept =
      change.kind === 'add'
        ? [...items.slice(0, change.at + 1), items[change.at], ...behind]
        : [...items.slice(0, change.at), ...behind];
    return withValue(facts, path, kept);
  }, printed);
}

/** The list itself and, where they go together, those of its length in the same object. */
function pathsOf(printed: unknown, path: Path, together: boolean): readonly Path[] {
  const parent = path.slice(0, -1);
  const around = valueAt(printed, parent);
  if (!together || typeof around !== 'object' || around === null || Array.isArray(around)) {
    return [path];
  }
  const { length } = valueAt(printed, path) as readonly unknown[];
  return Object.entries(around)
    .filter(([, value]) => Array.isArray(value) && value.length === length)
    .map(([name]) => [...parent, name]);
}
