// What mirror-half says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { isMirrored } from '../../page/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { capitalised } from '../wording.ts';
import { MESSAGES } from './messages-en.ts';
import {
  answerSchema,
  type Cells,
  isChosen,
  PARAMETERS,
  type Printed,
  responseTo,
} from './task.ts';

type SayHalf = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('mirror-half', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayHalf, wording: Wording): Spoken<Printed> {
  const isChoice = (printed: Printed) => isChosen(responseTo(printed));
  return {
    say: (printed) => [
      say('say.line', { axis: printed.axis }),
      say(`say.${responseTo(printed)}`, { axis: printed.axis }),
    ],
    show: (printed) => `${say('show')} ${say(isChoice(printed) ? 'show.choose' : 'show.make')}`,
    help: (printed) => [...say.all('help'), ...(isChoice(printed) ? [say('help.choose')] : [])],
    easierNow: (printed) => say(isChoice(printed) ? 'easier.choose' : 'easier'),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function description(say: SayHalf, wording: Wording, printed: Printed): string {
  const { part, offered = [] } = printed;
  const all = [part, ...offered].flatMap(({ cells }) => figuresOf(cells));
  const rowsIn = (cells: Cells) => rowsInWords(say, wording, cells, part.columns, all);
  const shown = say(`describe.${whereGiven(printed)}`, { rows: rowsIn(part.cells) });
  if (offered.length === 0) return `${shown} ${say('describe.rest')}`;
  const halves = offered.map(({ cells }, place) =>
    capitalised(
      say('describe.half', {
        place: place + 1,
        ordinal: wording.ordinal(place),
        rows: rowsIn(cells),
      }),
    ),
  );
  return [shown, ...halves].join(' ');
}

/** Where the given part lies from the mirror lines. */
function whereGiven({ axis, given = 'first' }: Printed) {
  if (axis === 'both') return `both.${given}` as const;
  if (axis === 'level') return given === 'second' ? 'level.lower' : 'level.upper';
  return given === 'first' ? 'upright.left' : 'upright.right';
}

function rowsInWords(
  say: SayHalf,
  wording: Wording,
  cells: Cells,
  columns: number,
  all: readonly Figure[],
): string {
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, row) => {
    const names = cells
      .slice(row * columns, (row + 1) * columns)
      .map((figure) => (figure ? wording.among(all, figure) : say('describe.empty')));
    // The picture keeps its look on a mirrored page, whose rows are read from the right.
    const read = isMirrored(wording.language) ? names.reverse() : names;
    return say('describe.row', { place: row + 1, names: wording.inRow(read) });
  });
  return wording.inParts(rows);
}

function answerText(say: SayHalf, wording: Wording, printed: Printed, key: unknown): string {
  const read = answerSchema.parse(key);
  if ('choice' in read) {
    const count = printed.offered?.length ?? 0;
    const ordinal = wording.ordinal(read.choice);
    return say('answer.half', { ordinal, count, number: wording.number(count) });
  }
  const { part, axis } = printed;
  const all = figuresOf(read.cells);
  const count = all.length - figuresOf(part.cells).length;
  const columns = axis === 'level' ? part.columns : 2 * part.columns;
  return [
    say('answer.made', { count, number: wording.number(count) }),
    say('answer.whole', { rows: rowsInWords(say, wording, read.cells, columns, all) }),
  ].join(' ');
}

function figuresOf(cells: Cells): readonly Figure[] {
  return cells.filter((figure) => figure !== null);
}
