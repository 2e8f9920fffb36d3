// The controls that every recipe has, whatever its activity; each is drawn anew only when it is to show something else.
import { memo, type ReactNode } from 'react';
import type { Values } from '../../activities/index.ts';
import type { ActivityCard, Catalogue } from '../making/protocol.ts';
import { atActivity, atStep, type Entries, onPaper } from '../recipe/entries.ts';
import type { Edit } from '../recipe/use-recipe.ts';
import { capital, type ShellControl, words } from '../words.ts';
import type { Choice } from './choice.ts';
import { ChoiceControl } from './choice-control.tsx';
import { NumberControl } from './number-control.tsx';

export interface ControlsProps {
  readonly catalogue: Catalogue;
  readonly card: ActivityCard;
  readonly entries: Entries;
  /** What the page shows, or the step asks for, where the person set nothing. */
  readonly inForce: Values;
  readonly objectionTo: (control: string) => string | undefined;
  readonly edit: Edit;
}

type ShellNumber = 'sheets' | 'tasks';
type ShellChoice = Exclude<ShellControl, ShellNumber>;

interface OneProps {
  readonly objection: string | undefined;
  readonly edit: Edit;
}

export function shellControls(props: ControlsProps): Readonly<Record<ShellControl, ReactNode>> {
  const { catalogue, card, entries, edit, objectionTo } = props;
  const rung = card.steps[entries.step - 1];
  const choice = (name: ShellChoice, value: string) => (
    <ChoiceOf
      name={name}
      value={value}
      catalogue={catalogue}
      card={card}
      objection={objectionTo(name)}
      edit={edit}
    />
  );
  const number = (name: ShellNumber, value: number) => (
    <NumberOf name={name} value={value} objection={objectionTo(name)} edit={edit} />
  );
  return {
    sheets: number('sheets', entries.sheets),
    tasks: number('tasks', entries.tasks ?? rung?.tasks ?? Number.NaN),
    activity: choice('activity', entries.activity),
    age: choice('age', String(rung?.age ?? '')),
    step: choice('step', String(entries.step)),
    paper: choice('paper', entries.paper),
    orientation: choice('orientation', entries.orientation),
    print: choice('print', entries.print),
  };
}

interface NumberOfProps extends OneProps {
  readonly name: ShellNumber;
  readonly value: number;
}

const NumberOf = memo(({ name, value, objection, edit }: NumberOfProps) => (
  <NumberControl
    label={words.labels[name]}
    value={value}
    noun={words.nouns[name](value)}
    objection={objection}
    onChange={(next) => edit((now) => ({ ...now, [name]: next }))}
  />
));

interface ChoiceOfProps extends OneProps {
  readonly name: ShellChoice;
  readonly value: string;
  readonly catalogue: Catalogue;
  readonly card: ActivityCard;
}

const ChoiceOf = memo(({ name, value, catalogue, card, objection, edit }: ChoiceOfProps) => {
  const { choices, chosen } = CHOICES[name];
  return (
    <ChoiceControl
      label={words.labels[name]}
      value={value}
      choices={choices(catalogue, card)}
      objection={objection}
      onChange={(next) => edit((now) => chosen(now, next, catalogue, card))}
    />
  );
});

interface ChoiceKind {
  readonly choices: (catalogue: Catalogue, card: ActivityCard) => readonly Choice[];
  /** What is asked for once it is chosen; `card` is of the activity before. */
  readonly chosen: (
    now: Entries,
    next: string,
    catalogue: Catalogue,
    card: ActivityCard,
  ) => Entries;
}

const CHOICES: Readonly<Record<ShellChoice, ChoiceKind>> = {
  activity: {
    choices: ({ activities }) =>
      activities.map(({ id, name, about }) => ({ value: id, name, note: about })),
    chosen: (now, id, catalogue, card) =>
      atActivity(now, id, stepOfSameAge(catalogue, card, now.step, id)),
  },
  age: {
    choices: (_, card) => ageChoices(card),
    chosen: (now, age, _, card) => atStep(now, firstStepOfAge(card, Number(age))),
  },
  step: {
    choices: (_, card) => stepChoices(card),
    chosen: (now, step) => atStep(now, Number(step)),
  },
  paper: {
    choices: ({ papers }) => named(papers, {}, words.paperNotes),
    chosen: (now, paper) => onPaper(now, paper),
  },
  orientation: {
    choices: ({ orientations }) => named(orientations, words.orientations),
    chosen: (now, orientation) => ({ ...now, orientation }),
  },
  print: {
    choices: ({ prints }) => named(prints, words.prints, words.printNotes),
    chosen: (now, print) => ({ ...now, print }),
  },
};

function ageChoices(card: ActivityCard): readonly Choice[] {
  const ages = [...new Set(card.steps.map((step) => step.age))];
  return ages.map((age) => ({ value: String(age), name: words.age(age) }));
}

function stepChoices(card: ActivityCard): readonly Choice[] {
  return card.steps.map(({ change, age }, index) => ({
    value: String(index + 1),
    name: words.stepName(index + 1),
    note: words.stepNote(capital(change), age),
  }));
}

function named(
  values: readonly string[],
  names: Readonly<Record<string, string>>,
  notes: Readonly<Record<string, string>> = {},
): readonly Choice[] {
  return values.map((value) => {
    const note = notes[value];
    return { value, name: names[value] ?? value, ...(note === undefined ? {} : { note }) };
  });
}

/** The easiest step for an age, so that a child begins with success. */
function firstStepOfAge(card: ActivityCard, age: number): number {
  return card.steps.findIndex((step) => step.age === age) + 1;
}

function stepOfSameAge(catalogue: Catalogue, from: ActivityCard, step: number, to: string): number {
  const card = catalogue.activities.find(({ id }) => id === to);
  const age = from.steps[step - 1]?.age;
  return card === undefined || age === undefined ? 1 : Math.max(1, firstStepOfAge(card, age));
}
