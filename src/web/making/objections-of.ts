// Turns refusals into what stands beside the controls: the place named as the control is labelled.
import { activityOf, isActivityId } from '../../activities/index.ts';
import type { Refusal } from '../../base/index.ts';
import { sentenceIn } from '../../words/index.ts';
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
    return {
      control,
      sentence: capital(
        sentenceIn(languageNow(), label === undefined ? refusal : { ...refusal, at: label }),
      ),
    };
  });
}

function labelOf(control: string, activity: string): string | undefined {
  const shell = SHELL_CONTROLS.find((name) => name === control);
  if (shell) return words.labels[shell];
  if (control === 'group' || control === 'children') return words.groupNames;
  if (control === 'onlyWith') return words.atHand.label;
  if (!isActivityId(activity)) return undefined;
  return activityOf(activity).words[languageNow()].parameters[control]?.label;
}
