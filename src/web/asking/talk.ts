// Questions to a worker and their replies: plain data, so that they can cross between threads.

import type { Language } from '../../languages/index.ts';

/** One question: what is asked, and what comes back. */
export interface Exchange {
  readonly ask: object;
  readonly reply: unknown;
}

/** The questions that a worker answers, by their kinds. */
export type Talk<T> = { readonly [K in keyof T]: Exchange };

/** A question on its way; `id` tells which reply is its own, `language` in which to say it. */
export type Question<T extends Talk<T>> = {
  [K in keyof T]: {
    readonly kind: K;
    readonly id: number;
    readonly language: Language;
  } & T[K]['ask'];
}[keyof T];

export interface Answer<T extends Talk<T>> {
  readonly id: number;
  readonly reply: T[keyof T]['reply'];
}

export interface Asker<T extends Talk<T>> {
  /** Asks one question; a reply always comes. */
  readonly ask: <K extends keyof T>(kind: K, what: T[K]['ask']) => Promise<T[K]['reply']>;
}
