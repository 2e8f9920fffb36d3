// Every rung that can be asked for: the ladder of an activity with each of its contents, in colour and in grey.
import type { Activity, Values } from '../src/activities/index.ts';
import { climb } from '../src/learner/index.ts';
import type { PrintStyle } from '../src/page/index.ts';

const STYLES: readonly PrintStyle[] = [{ print: 'colour' }, { print: 'grey' }];

/** Values of one rung with one content, in one print. */
export interface Rung {
  readonly content: string;
  readonly step: number;
  readonly values: Values;
  readonly style: PrintStyle;
}

/** The ladder with each content in each print, each different set of values once. */
export function rungsOf(activity: Activity): readonly Rung[] {
  const { content } = activity.parameters;
  const contents = content?.kind === 'choice' ? content.values : [];
  const rungs = STYLES.flatMap((style) =>
    contents.flatMap((each) => {
      const climbed = climb(activity, { content: each }, style);
      if (!climbed.ok) throw new Error(`${activity.id}, ${each}: ${JSON.stringify(climbed)}`);
      return climbed.value.map((values, index) => ({
        content: each,
        step: index + 1,
        values,
        style,
      }));
    }),
  );
  const keyed = rungs.map((rung) => [JSON.stringify([rung.values, rung.style]), rung] as const);
  return [...new Map(keyed).values()];
}
