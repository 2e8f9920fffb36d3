// What by-key says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { MESSAGES } from './messages-en.ts';
import { PARAMETERS } from './parameters.ts';
import { responseName } from './response-name.ts';
import type { Entry, Printed } from './task.ts';

type SayKey = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('by-key', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayKey, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => {
      const past = variesIn(printed);
      return [
        say('say.look'),
        say('say.shows'),
        deedSentence(say, printed),
        ...(past === undefined ? [] : [say(`say.past.${past}`)]),
        say('say.along'),
      ];
    },
    show: ({ key }) => say('show', { name: nameIn(wording, key, key[0]) }),
    describe: (printed) => {
      const names = printed.key.map((entry) => nameIn(wording, printed.key, entry));
      return [
        say('describe.key', { names: wording.list(names) }),
        say('describe.items', { count: printed.items.length }),
        deedSentence(say, printed),
      ].join(' ');
    },
    answer: ({ key }, answer) => {
      const order: readonly unknown[] = Array.isArray(answer) ? answer : [];
      const entries = key.map((entry, place) =>
        say('answer.entry', {
          count: order.filter((other) => other === place).length,
          name: nameIn(wording, key, entry),
          response: responseName(entry.response, wording.language),
        }),
      );
      return say('answer', { entries: wording.inParts(entries) });
    },
  };
}

function deedSentence(say: SayKey, { key }: Printed): string {
  return say(`say.${key[0]?.response.kind ?? 'ring'}`);
}

/** A figure's name without the outline that all figures share, and with sizes by rank among those of the key. */
function nameIn(wording: Wording, key: readonly Entry[], entry: Entry | undefined): string {
  if (!entry) return '';
  const { fill, ...rest } = entry.figure;
  const all = key.map(({ figure }) => figure);
  return wording.among(all, fill === undefined || fill === 'outline' ? rest : { ...rest, fill });
}

/** The one thing, if any, that changes from item to item although the key's figures all share it. */
function variesIn({ key, items }: Printed) {
  const differs = (figures: readonly Figure[], field: keyof Figure) =>
    new Set(figures.map((figure) => figure[field])).size > 1;
  const figures = key.map((entry) => entry.figure);
  const fields = ['size', 'colour', 'form', 'layout'] as const;
  return fields.find((name) => differs(items, name) && !differs(figures, name));
}
