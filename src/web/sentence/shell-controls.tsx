// The controls that every recipe has, whatever its activity.
import type { ReactNode } from 'react';
import type { Values } from '../../activities/index.ts';
import type { ActivityCard, Catalogue, Shown } from '../making/protocol.ts';
import { atActivity, atStep, type Entries, onPaper } from '../recipe/entries.ts';
import { capital, type ShellControl, words } from '../words.ts';
import { type Choice, ChoiceControl } from './choice-control.tsx';
import { NumberControl } from './number-control.tsx';

export interface ControlsProps {
  readonly catalogue: Catalogue;
  readonly card: ActivityCard;
  readonly entries: Entries;
  /** What the page shows, or the step asks for, where the person set nothing. */
  readonly inForce: Values;
  /** How much of the page on the table is inked; absent: not known. */
  readonly inked: Shown['inked'] | undefined;
  readonly objectionTo: (control: string) => string | undefined;
  readonly edit: (entries: Entries) => void;
}

export function shellControls(props: ControlsProps): Readonly<Record<ShellControl, ReactNode>> {
  const { catalogue, card, entries, edit } = props;
  const rung = card.steps[entries.step - 1];
  const choice = (
    name: Exclude<ShellControl, 'sheets' | 'tasks'>,
    value: string,
    choices: readonly Choice[],
    onChange: (value: string) => void,
  ) => (
    <ChoiceControl
      label={words.labels[name]}
      value={value}
      choices={choices}
      objection={props.objectionTo(name)}
      onChange={onChange}
    />
  );
  const number = (name: 'sheets' | 'tasks', value: number) => (
    <NumberControl
      label={words.labels[name]}
      value={value}
      noun={words.nouns[name](value)}
      objection={props.objectionTo(name)}
      onChange={(next) => edit({ ...entries, [name]: next })}
    />
  );
  return {
    sheets: number('sheets', entries.sheets),
    tasks: number('tasks', entries.tasks ?? rung?.tasks ?? Number.NaN),
    activity: choice('activity', entries.activity, activityChoices(catalogue), (id) =>
      edit(atActivity(entries, id, stepOfSameAge(catalogue, card, entries.step, id))),
    ),
    age: choice('age', String(rung?.age ?? ''), ageChoices(card), (age) =>
      edit(atStep(entries, firstStepOfAge(card, Number(age)))),
    ),
    step: choice('step', String(entries.step), stepChoices(card), (step) =>
      edit(atStep(entries, Number(step))),
    ),
    paper: choice('paper', entries.paper, named(catalogue.papers, {}, words.paperNotes), (paper) =>
      edit(onPaper(entries, paper)),
    ),
    orientation: choice(
      'orientation',
      entries.orientation,
      named(catalogue.orientations, words.orientations),
      (orientation) => edit({ ...entries, orientation }),
    ),
    print: choice(
      'print',
      entries.print,
      named(catalogue.prints, words.prints, words.printNotes),
      (print) => edit({ ...entries, print }),
    ),
  };
}

function activityChoices(catalogue: Catalogue): readonly Choice[] {
  return catalogue.activities.map(({ id, name, about }) => ({ value: id, name, note: about }));
}

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
