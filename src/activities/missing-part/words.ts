// What missing-part says to the adult and, through the adult, to the child.
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, PARAMETERS, type Piece, type Printed, responseTo } from './task.ts';

type SayPart = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('missing-part', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayPart, wording: Wording): Spoken<Printed> {
  const byResponse = (key: 'show' | 'help.2' | 'easier' | 'harder', printed: Printed) =>
    say(key, { response: responseTo(printed) });
  return {
    say: (printed) => question(say, printed),
    show: (printed) => byResponse('show', printed),
    help: (printed) => [say('help.1'), byResponse('help.2', printed)],
    easierNow: (printed) => byResponse('easier', printed),
    harderNow: (printed) => byResponse('harder', printed),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function question(say: SayPart, printed: Printed): readonly string[] {
  const response = responseTo(printed);
  return [
    say('say.look'),
    ...(response === 'draw' ? [] : [say('say.which')]),
    say(`say.${response}`),
  ];
}

function description(say: SayPart, wording: Wording, printed: Printed): string {
  const { field, columns, offered = [] } = printed;
  const count = Math.ceil(field.length / columns);
  const rows = Array.from({ length: count }, (_, row) =>
    wording.inRow(
      field
        .slice(row * columns, (row + 1) * columns)
        .map((figure) => (figure ? nameIn(wording, printed, [figure]) : say('describe.hole'))),
    ),
  );
  const shown = say('describe.field', {
    count,
    number: wording.number(count),
    rows: wording.inParts(rows),
  });
  if (offered.length === 0) return shown;
  const pieces = offered.map((piece, place) =>
    say('describe.piece', { place: place + 1, names: nameIn(wording, printed, piece) }),
  );
  return `${shown} ${say('describe.choices', { pieces: wording.inParts(pieces) })}`;
}

function answerText(say: SayPart, wording: Wording, printed: Printed, key: unknown): string {
  const { figures } = answerSchema.parse(key);
  const names = nameIn(wording, printed, figures);
  const { offered = [] } = printed;
  const place = offered.findIndex((piece) => nameIn(wording, printed, piece) === names);
  return place < 0
    ? say('answer.drawn', { names })
    : say('answer.piece', { ordinal: wording.ordinal(place), names });
}

/** The figures of a piece, with sizes by rank among those of the task. */
function nameIn(wording: Wording, { field, offered = [] }: Printed, piece: Piece): string {
  const all = [...field, ...offered.flat()].filter((figure) => figure !== null);
  return wording.list(piece.map((figure) => wording.among(all, figure)));
}
