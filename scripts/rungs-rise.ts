// Measures that each rung is harder than the one below, in every activity and content: `npm run rungs [seeds] [activity …]`.
import { ACTIVITY_IDS, activityOf } from '../src/activities/index.ts';
import { differentRungs, meansOf, placeThatFails } from '../src/learner/index.ts';

const USUAL_SEEDS = 200;
const STYLE = { print: 'colour' } as const;
/** Any rise at all: means are given to 0.01 logits. */
const LEAST_RISE = 0.01;

export function main([seeds = String(USUAL_SEEDS), ...names]: readonly string[]): void {
  const ids = names.length === 0 ? ACTIVITY_IDS : ACTIVITY_IDS.filter((id) => names.includes(id));
  let failures = 0;
  for (const id of ids) {
    const activity = activityOf(id);
    const { content } = activity.parameters;
    for (const each of content?.kind === 'choice' ? content.values : []) {
      const rungs = differentRungs(activity, { content: each }, STYLE);
      if (!rungs.ok) throw new Error(`${id}, ${each}: ${JSON.stringify(rungs.refusals)}`);
      const means = meansOf(activity, rungs.value, Number(seeds), STYLE);
      const place = placeThatFails(means, LEAST_RISE);
      failures += place === 0 ? 0 : 1;
      const verdict = place === 0 ? '' : `  rung ${place} is NOT HARDER than rung ${place - 1}`;
      console.log(`${id.padEnd(18)} ${each.padEnd(24)} ${means.join(' ')}${verdict}`);
    }
  }
  console.log(
    failures === 0
      ? '\nevery rung rises'
      : `\n${failures} ladders do not rise: what a rung changes is no feature of its tasks, or too little of one`,
  );
  process.exitCode = failures === 0 ? 0 : 1;
}
