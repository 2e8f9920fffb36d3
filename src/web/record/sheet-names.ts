// The names of sheets by their codes: activity and step in words, as the maker reads the codes.
import { useEffect, useState } from 'react';
import type { Maker } from '../making/maker.ts';
import type { Catalogue } from '../making/protocol.ts';
import { words } from './words.ts';

export function nameOf(catalogue: Catalogue | undefined, activity: string): string {
  return catalogue?.activities.find(({ id }) => id === activity)?.name ?? activity;
}

/** The name of each code; a code that this version cannot read is its own name. */
export function useSheetNames(
  maker: Maker,
  catalogue: Catalogue | undefined,
  codes: readonly string[],
): (code: string) => string {
  const [read, setRead] = useState<ReadonlyMap<string, string>>(new Map());
  const wanted = [...new Set(codes)].filter((code) => !read.has(code)).join(' ');
  useEffect(() => {
    if (wanted === '' || catalogue === undefined) return undefined;
    let isWanted = true;
    const naming = wanted.split(' ').map(async (code): Promise<[string, string]> => {
      const reply = await maker.ask('open', { code });
      if (!reply.ok) return [code, words.sheetOfCode(code)];
      return [code, words.sheetName(nameOf(catalogue, reply.value.activity), reply.value.step)];
    });
    void Promise.all(naming).then((named) => {
      if (isWanted) setRead((before) => new Map([...before, ...named]));
    });
    return () => {
      isWanted = false;
    };
  }, [maker, catalogue, wanted]);
  return (code) => read.get(code) ?? words.sheetOfCode(code);
}
