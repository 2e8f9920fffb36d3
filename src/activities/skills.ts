// What activities exercise, in a few plain kinds: what is known of a child is kept by these.

/**
 * The closed list. Which skills there are and which activity exercises which is common practice, no source: kinds of
 * visual perception are named and cut in many ways.
 */
export const SKILLS = ['telling-apart', 'rules', 'patterns', 'turns', 'parts', 'memory'] as const;
export type Skill = (typeof SKILLS)[number];
