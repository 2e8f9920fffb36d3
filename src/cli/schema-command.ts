// `samewise schema`: the JSON Schema of the pack file, of the recipe or of the stock, or of all by name.
import { SCHEMAS } from '../sheets/index.ts';
import { choiceOf } from './option-values.ts';
import { print } from './terminal.ts';

const NAMES = ['pack', 'recipe', 'stock'] as const;

/** Prints the schema of this name, or all by name; refuses a name that there is not. */
export function runSchema(name: string | undefined): void {
  const schema = name === undefined ? SCHEMAS : SCHEMAS[choiceOf(name, 'schema', NAMES)];
  print(`${JSON.stringify(schema, null, 2)}\n`);
}
