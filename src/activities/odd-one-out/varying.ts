// What can change without saying anything in each content, and from how many figures on.
import {
  type Attribute,
  attributesOf,
  type ContentId,
  isOfCharacters,
} from '../../figures/index.ts';
import type { Content } from './task.ts';

/** Attributes that change without saying anything; `layout`: how dots lie. */
export type IdleAttribute = Attribute | 'layout';

/** Two pairs that look alike and the odd one: with fewer, another figure would be without its like. */
export const LEAST_TO_VARY = 5;

/** More looks than these among eight figures are not taken in. */
const MOST_GROUPS = 3;
/** So many at least look alike in everything, so that no figure but the odd one is without its like. */
const LEAST_ALIKE = 2;

/** Into how many groups of like ones so many figures fall at most. */
export function mostGroups(figures: number): number {
  return Math.min(MOST_GROUPS, Math.floor(figures / LEAST_ALIKE));
}

/** Contents of one attribute beside which the colour does not change. */
const IDLE: Readonly<Partial<Record<Content, readonly IdleAttribute[]>>> = {
  colours: ['form'],
  textures: ['form'],
  'dot-quantities': ['layout'],
};

/** What may change while one attribute of the content tells the odd figure. */
export function idleAttributes(content: ContentId, odd: Attribute): readonly IdleAttribute[] {
  const attributes = attributesOf(content);
  if (attributes.length > 1) return attributes.filter((attribute) => attribute !== odd);
  return IDLE[content] ?? ['colour'];
}

/** Whether figures of the content are read, so that in grey print letters which mark colours would be read too. */
export function isRead(content: Content): boolean {
  const plain = plainContent(content);
  return plain !== undefined && (plain === 'signs' || isOfCharacters(plain));
}

/** The content as `figures` knows it; none for kinds of pictures. */
export function plainContent(content: Content): ContentId | undefined {
  return content === 'picture-kinds' ? undefined : content;
}
