// What is written in the form of a child, and the entry that it comes to.
import { z } from 'zod';
import { DEEDS, type Deed } from '../../activities/index.ts';
import { accept, type Result } from '../../base/index.ts';
import {
  type Child,
  type ColourVision,
  type Draft,
  WRITING_HANDS,
  type WritingHand,
} from '../../records/index.ts';
import { readLanguages, writeLanguages } from './languages.ts';
import { words } from './words.ts';

export interface ChildDraft {
  readonly nickname: string;
  readonly birthMonth: string;
  readonly writingHand: readonly WritingHand[];
  readonly colourVision: readonly ColourVision[];
  readonly languages: string;
  readonly deeds: readonly Deed[];
}

function childDraftOf(child: Child | undefined): ChildDraft {
  return {
    nickname: child?.nickname ?? '',
    birthMonth: child?.birthMonth ?? '',
    writingHand: child?.writingHand ? [child.writingHand] : [],
    colourVision: child?.colourVision ? [child.colourVision] : [],
    languages: writeLanguages(child?.languages ?? []),
    deeds: child?.deeds ?? [],
  };
}

const VISIONS = Object.keys(words.visions) as readonly ColourVision[];

const draftSchema: z.ZodType<ChildDraft> = z.object({
  nickname: z.string(),
  birthMonth: z.string(),
  writingHand: z.array(z.enum(WRITING_HANDS)),
  colourVision: z.array(z.literal(VISIONS)),
  languages: z.string(),
  deeds: z.array(z.enum(DEEDS)),
});

/** The draft that was left unsaved; that of the child as it is where none was. */
export function readChildDraft(left: unknown, child: Child | undefined): ChildDraft {
  const read = draftSchema.safeParse(left);
  return read.success ? read.data : childDraftOf(child);
}

/** The entry for a new child, or for the change of one: what is left out there is taken back. */
export function childEntryOf(draft: ChildDraft, child: Child | undefined): Result<Draft> {
  const languages = readLanguages(draft.languages);
  if (!languages.ok) return languages;
  const facts = {
    birthMonth: draft.birthMonth.trim() || null,
    writingHand: draft.writingHand[0] ?? null,
    colourVision: draft.colourVision[0] ?? null,
    languages: languages.value.length > 0 ? languages.value : null,
    deeds: draft.deeds.length > 0 ? draft.deeds : null,
  };
  const nickname = draft.nickname.trim();
  return accept(
    child === undefined
      ? { kind: 'child', nickname, ...given(facts) }
      : { kind: 'child', child: child.id, nickname, ...facts },
  );
}

/** A new child has nothing to take back. */
function given<T extends object>(facts: T): Partial<T> {
  return Object.fromEntries(
    Object.entries(facts).filter(([, fact]) => fact !== null),
  ) as Partial<T>;
}
