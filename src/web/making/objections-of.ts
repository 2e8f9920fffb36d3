// Turns refusals into what stands beside the controls: the place named as the control is labelled.
import { activityOf, isActivityId } from '../../activities/index.ts';
import { asGot, type Refusal } from '../../base/index.ts';
import { nearestOf, sentenceIn } from '../../words/index.ts';
import { languageNow } from '../speaking/language-now.ts';
import { capital, SHELL_CONTROLS, words } from '../words.ts';
import { lastName } from './last-name.ts';
import type { Objection } from './protocol.ts';

/** The place of refusals of a code that stands by itself. */
const CODE = 'sheet code';

export function objectionsOf(refusals: readonly Refusal[], activity: string): readonly Objection[] {
  return refusals.map((refusal) => {
    const control = lastName(refusal.at);
    const label = refusal.at === CODE ? words.codeField : labelOf(control, activity);
    const told = label === undefined ? refusal : { ...refusal, at: label };
    const shown = choicesNamed(told, (value) => nameOf(value, control, activity));
    return { control, sentence: capital(sentenceIn(languageNow(), shown)) };
  });
}

/** Choices are named as their control shows them, the nearest found among what links write. */
function choicesNamed(refusal: Refusal, name: (value: string) => string): Refusal {
  if (refusal.code !== 'not-a-choice') return refusal;
  const got = asGot(refusal.got);
  const nearest = refusal.nearest ?? nearestOf(String(got), refusal.choices);
  return {
    ...refusal,
    got: typeof got === 'number' || got === null ? got : name(String(got)),
    choices: refusal.choices.map(name),
    ...(nearest === undefined ? {} : { nearest: name(nearest) }),
  };
}

/** What a control calls a value of its; the value itself where no control of a recipe is meant, as in a file. */
function nameOf(value: string, control: string, activity: string): string {
  if (activity === '') return value;
  if (control === 'activity') {
    return isActivityId(value) ? activityOf(value).words[languageNow()].name : value;
  }
  const said = isActivityId(activity) ? activityOf(activity).words[languageNow()] : undefined;
  const names = shellNames(control) ?? said?.parameters[control]?.choices ?? {};
  const name = Object.hasOwn(names, value) ? names[value] : undefined;
  if (name !== undefined) return name;
  return value === 'true' ? words.yes : value === 'false' ? words.no : value;
}

function shellNames(control: string): Readonly<Record<string, string>> | undefined {
  if (control === 'orientation') return words.orientations;
  return control === 'print' ? words.prints : undefined;
}

function labelOf(control: string, activity: string): string | undefined {
  const shell = SHELL_CONTROLS.find((name) => name === control);
  if (shell) return words.labels[shell];
  if (control === 'group' || control === 'children') return words.groupNames;
  if (control === 'onlyWith') return words.atHand.label;
  if (!isActivityId(activity)) return undefined;
  return activityOf(activity).words[languageNow()].parameters[control]?.label;
}
