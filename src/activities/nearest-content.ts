// The content that an activity has which comes nearest to one that it cannot carry.
import { type Refusal, told } from '../base/index.ts';
import { attributesOf, CONTENT_IDS, type ContentId } from '../figures/index.ts';

/** A refused choice that is a content of other activities, told with the nearest one that this activity has. */
export function withNearestContent(refusal: Refusal): Refusal {
  if (refusal.code !== 'not-a-choice' || refusal.nearest !== undefined) return refusal;
  const got = CONTENT_IDS.find((content) => content === refusal.got);
  const nearest = got && nearestContent(got, refusal.choices);
  if (!got || nearest === undefined) return refusal;
  return {
    ...refusal,
    nearest,
    because: told('reasons', 'content.here', { content: { content: got } }),
  };
}

/** Of contents alike near the first: one that shares most of what is looked at, and adds least to it. */
function nearestContent(content: ContentId, choices: readonly string[]): ContentId | undefined {
  const known = choices.flatMap((choice) => CONTENT_IDS.filter((each) => each === choice));
  const farness = (other: ContentId) => {
    const [wanted, had] = [attributesOf(content), attributesOf(other)];
    const missing = wanted.filter((attribute) => !had.includes(attribute));
    const added = had.filter((attribute) => !wanted.includes(attribute));
    return missing.length * CONTENT_IDS.length + added.length;
  };
  const least = Math.min(...known.map(farness));
  return known.find((other) => farness(other) === least);
}
