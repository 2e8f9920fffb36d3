// What size-order says to the adult and, through the adult, to the child.
import { type Figure, formOf } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Printed } from './task.ts';

type SayOrder = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('size-order', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayOrder, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => question(say, wording, printed),
    show: (printed) => show(say, printed),
    help: (printed) => [say('help.1', toAgree(printed)), say('help.2', toAgree(printed))],
    easierNow: (printed) => say('easier', toAgree(printed)),
    harderNow: (printed) => say('harder', toAgree(printed)),
    lookFor: (printed) => [say('lookFor.1', toAgree(printed)), say('lookFor.2', toAgree(printed))],
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

/** What messages choose their sentences by. */
function toAgree(printed: Printed) {
  const { asked = 'order' } = printed;
  return { asked, look: isOfDots(printed) ? 'dots' : 'sizes' };
}

function isOfDots({ figures }: Printed): boolean {
  return figures.some((figure) => formOf(figure) === 'dots');
}

function question(say: SayOrder, wording: Wording, printed: Printed): readonly string[] {
  const { asked = 'order', figures, response = 'point' } = printed;
  const values = toAgree(printed);
  if (asked !== 'order') {
    const count = Math.floor((figures.length - 1) / 2);
    return [
      say(`say.${asked}`, { ...values, count, number: wording.number(count) }),
      say(response === 'ring' ? 'say.ring' : 'say.point'),
    ];
  }
  if (response === 'point' || response === 'ring') return [say('order.point', values)];
  return [say(`order.${response}`, values), say(`order.${response}.next`, values)];
}

function show(say: SayOrder, printed: Printed): string {
  const values = toAgree(printed);
  const way = say('show', values);
  return values.asked === 'order' ? `${way} ${say('show.order', values)}` : way;
}

/** Says what there is, and of sizes and numbers only that they differ. */
function description(say: SayOrder, wording: Wording, printed: Printed): string {
  const { figures } = printed;
  const { reading } = wording;
  const count = figures.length;
  const number = wording.number(count);
  if (isOfDots(printed)) return capitalised(say('describe.cards', { count, number }));
  const names = figures.map((figure) => nameOf(wording, figure));
  const isOneName = names.every((name) => name === names[0]);
  const form = formOf(figures[0] ?? {});
  return isOneName
    ? say('describe.one-name', { reading, count, number, name: wording.form(form, 'name'), form })
    : say('describe.names', { reading, names: wording.list(names) });
}

function nameOf(wording: Wording, { size: _size, ...rest }: Figure): string {
  return wording.figure(rest);
}

function answerText(say: SayOrder, wording: Wording, printed: Printed, key: unknown): string {
  const places = answerSchema.parse(key);
  const { asked = 'order' } = printed;
  const values = { ...toAgree(printed), reading: wording.reading };
  if (asked !== 'order') {
    return say(`answer.${asked}`, { ...values, ordinal: wording.ordinal(places[0] ?? 0) });
  }
  const named = places.map((place) =>
    say('answer.place', { ...values, ordinal: wording.ordinal(place) }),
  );
  return say('answer.order', { ...values, places: wording.list(named) });
}
