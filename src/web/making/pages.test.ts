// How pages are asked for while dials are being turned.
import { expect, test } from 'vitest';
import { FIRST_ENTRIES } from '../recipe/entries.ts';
import { type PageAsked, pagesFrom } from './pages.ts';
import type { Reply, Shown } from './protocol.ts';

const asked = (seed: number): PageAsked => ({
  entries: { ...FIRST_ENTRIES, seed },
  view: 'sheet',
  wanted: 1,
  leaf: 1,
});

/** A maker that replies when it is told to. */
function slowMaker() {
  const seeds: number[] = [];
  const replies: (() => void)[] = [];
  const refusal: Reply<Shown> = { ok: false, objections: [] };
  const ask = (_kind: string, what: object) =>
    new Promise<never>((settle) => {
      seeds.push((what as PageAsked).entries.seed);
      replies.push(() => settle(refusal as never));
    });
  const reply = async () => {
    replies.shift()?.();
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { maker: { ask }, seeds, reply };
}

test('the first page is asked for at once, and of what changes meanwhile only the last', async () => {
  const { maker, seeds, reply } = slowMaker();
  const pages = pagesFrom(maker);
  for (const seed of [1, 2, 3]) pages.ask(asked(seed));
  expect(seeds).toEqual([1]);
  await reply();
  expect(seeds).toEqual([1, 3]);
});

test('only the reply to what was asked for last is told', async () => {
  const { maker, reply } = slowMaker();
  const pages = pagesFrom(maker);
  const told: number[] = [];
  pages.onReply(({ entries }) => told.push(entries.seed));
  for (const seed of [1, 2]) pages.ask(asked(seed));
  await reply();
  expect(told).toEqual([]);
  await reply();
  expect(told).toEqual([2]);
});

test('what was asked for ahead is not asked for again once the screen asks for it', async () => {
  const { maker, seeds, reply } = slowMaker();
  const pages = pagesFrom(maker);
  pages.ask(asked(1));
  await reply();
  const next = { ...FIRST_ENTRIES, seed: 2 };
  pages.askAhead(next);
  pages.ask({ ...asked(1), entries: next });
  await reply();
  expect(seeds).toEqual([1, 2]);
});

test('what is to be made of the house alone is not asked for ahead, since its stock is not put in', async () => {
  const { maker, seeds, reply } = slowMaker();
  const pages = pagesFrom(maker);
  pages.ask(asked(1));
  await reply();
  pages.askAhead({ ...FIRST_ENTRIES, seed: 2, atHand: true });
  expect(seeds).toEqual([1]);
});

test('once other pictures are known, only a page that shows such pictures is asked for again', async () => {
  const { maker, seeds, reply } = slowMaker();
  const pages = pagesFrom(maker);
  pages.ask(asked(1));
  await reply();
  pages.askAgain();
  const entries = { ...FIRST_ENTRIES, seed: 2, pictures: ['2222222'] };
  pages.ask({ ...asked(2), entries });
  await reply();
  pages.askAgain();
  await reply();
  expect(seeds).toEqual([1, 2, 2]);
});
