// `samewise activities`: what can be made, as a table to read or as JSON.
import { ACTIVITY_IDS, type Activity, activityOf, type Parameter } from '../activities/index.ts';
import { SHELL_WORDS } from '../words/index.ts';
import { activityIdOf } from './option-values.ts';
import { print } from './terminal.ts';

const words = SHELL_WORDS;
const INDENT = '  ';

/** Prints all activities, or the one of this id; refuses an id that there is not. */
export function runActivities(id: string | undefined, options: { readonly json?: boolean }): void {
  const ids = id === undefined ? ACTIVITY_IDS : [activityIdOf(id, 'activities')];
  const activities = ids.map(activityOf);
  const facts = id === undefined ? activities.map(factsOf) : activities.map(factsOf)[0];
  print(
    options.json === true
      ? `${JSON.stringify(facts, null, 2)}\n`
      : `${activities.map(tableOf).join('\n\n')}\n`,
  );
}

function factsOf({ id, words: { en }, parameters, ladder }: Activity) {
  return {
    id,
    name: en.name,
    about: en.about,
    parameters: Object.entries(parameters).map(([name, parameter]) => ({
      name,
      ...parameter,
      label: en.parameters[name]?.label,
      help: en.parameters[name]?.help,
    })),
    steps: ladder.map((rung, index) => ({ step: index + 1, ...rung, change: en.steps[index] })),
  };
}

function tableOf(activity: Activity): string {
  const { id, words: spoken } = activity;
  return [
    `${id}: ${spoken.en.about}`,
    ...choiceLines(activity, 'content', words.list.contents),
    ...choiceLines(activity, 'response', words.list.responses),
    `${INDENT}${words.list.parameters}`,
    ...parameterLines(activity),
    `${INDENT}${words.list.steps}`,
    ...stepLines(activity),
  ].join('\n');
}

function choiceLines(activity: Activity, name: string, title: string): readonly string[] {
  const parameter = activity.parameters[name];
  if (parameter?.kind !== 'choice') return [];
  const choices = activity.words.en.parameters[name]?.choices ?? {};
  const rows = parameter.values.map((value) => [value, choices[value] ?? '']);
  return [`${INDENT}${title}`, ...columns(rows)];
}

function parameterLines({ parameters, words: { en } }: Activity): readonly string[] {
  return columns(
    Object.entries(parameters).map(([name, parameter]) => [
      name,
      rangeText(name, parameter),
      en.parameters[name]?.label ?? '',
    ]),
  );
}

/** Contents and responses are listed above with their phrases. */
function rangeText(name: string, parameter: Parameter): string {
  switch (parameter.kind) {
    case 'whole':
      return words.range(parameter.min, parameter.max);
    case 'choice':
      return name === 'content' || name === 'response'
        ? words.list.above
        : parameter.values.join(', ');
    case 'yes-no':
      return words.yesNo;
  }
}

function stepLines({ ladder, words: { en } }: Activity): readonly string[] {
  return columns(
    ladder.map(({ age, tasks }, index) => [
      String(index + 1),
      words.step(age, tasks),
      en.steps[index] ?? '',
    ]),
  );
}

/** Rows of cells under one another, the last cell as long as it is. */
function columns(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? '').length)),
  );
  return rows.map((row) => {
    const cells = row.map((cell, column) => cell.padEnd(widths[column] ?? 0));
    return `${INDENT}${INDENT}${cells.join(INDENT)}`.trimEnd();
  });
}
