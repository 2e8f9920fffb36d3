// Forms that are letters of a name, before all others.
import { type FormId, isLetter } from './form-names.ts';
import { characterOf } from './letter-outlines.ts';

/** Whether a form is one of the letters that are wanted. */
export function isWantedForm(form: FormId | undefined, letters: string | undefined): boolean {
  return form !== undefined && letters !== undefined && isLetter(form)
    ? letters.includes(characterOf(form))
    : false;
}

/** The wanted ones first, each part in its order; all as they are where no letters are wanted. */
export function wantedFirst<T>(
  items: readonly T[],
  letters: string | undefined,
  formOf: (item: T) => FormId | undefined,
): readonly T[] {
  if (letters === undefined) return items;
  const isWanted = (item: T) => isWantedForm(formOf(item), letters);
  return [...items.filter(isWanted), ...items.filter((item) => !isWanted(item))];
}
