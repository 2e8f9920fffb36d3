// What a person wishes of plans, remembered from visit to visit; whatever of it cannot be read is as at first.
import { useState } from 'react';
import { z } from 'zod';
import { HOME_PAPERS, PRINT_CHOICES } from '../../page/index.ts';
import { USUAL_MINUTES } from '../../plan/index.ts';
import { DEFAULT_PAGE, DEFAULT_PRINT } from '../../sheets/index.ts';
import { recall, remember } from '../children/remembered.ts';
import type { PlanWishes } from './cards.ts';

/** Minutes a day that can be wished for: common practice, no source. */
export const MINUTES = [5, 10, 15, 20] as const;
/** Kinds of things that a house may have or not. */
export const THINGS = ['sticker', 'crayon', 'pencil', 'scissors', 'glue'] as const;

const rememberedSchema = z.object({
  minutes: z.literal(MINUTES).catch(USUAL_MINUTES),
  paper: z.enum(HOME_PAPERS).catch('A4'),
  print: z.enum(PRINT_CHOICES).catch(DEFAULT_PRINT),
  things: z.array(z.enum(THINGS)).catch([...THINGS]),
});

/** The wishes of this browser, and a way to change them for all visits to come. */
export function usePlanWishes(): readonly [PlanWishes, (wishes: PlanWishes) => void] {
  const [wishes, setWishes] = useState(() => wishesIn(recall('wishes')));
  const change = (next: PlanWishes) => {
    setWishes(next);
    remember('wishes', textOf(next));
  };
  return [wishes, change];
}

/** The same wishes with these things in the house. */
export function withThings(
  wishes: PlanWishes,
  things: readonly (typeof THINGS)[number][],
): PlanWishes {
  const { supplies: _before, ...others } = wishes;
  return things.length === THINGS.length ? others : { ...others, supplies: things };
}

/** The wishes that a text holds. */
export function wishesIn(text: string | undefined): PlanWishes {
  const { minutes, paper, print, things } = rememberedSchema.parse(objectIn(text));
  return withThings({ minutes, page: { ...DEFAULT_PAGE, paper }, print }, things);
}

/** What is wished as long as nobody said anything. */
export const USUAL_WISHES = wishesIn(undefined);

/** The wishes as a text that is read back as they are. */
export function textOf({ minutes, page, print, supplies = THINGS }: PlanWishes): string {
  return JSON.stringify({ minutes, paper: page.paper, print, things: supplies });
}

/** The object that a text holds; an empty one where it holds none. */
function objectIn(text = '{}'): object {
  try {
    const value: unknown = JSON.parse(text);
    const isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
    return isObject ? value : {};
  } catch {
    return {};
  }
}
