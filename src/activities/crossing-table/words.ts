// What crossing-table says to the adult and, through the adult, to the child.
import type { Figure } from '../../figures/index.ts';
import type { Say } from '../../languages/index.ts';
import { inAllLanguages, type Spoken, type Wording } from '../in-words.ts';
import { MESSAGES } from './messages-en.ts';
import { answerSchema, type Head, PARAMETERS, type Printed, responseTo } from './task.ts';

type SayTable = Say<typeof MESSAGES>;

export const WORDS = inAllLanguages('crossing-table', MESSAGES, PARAMETERS, spoken);

function spoken(say: SayTable, wording: Wording): Spoken<Printed> {
  return {
    say: (printed) => [
      say(printed.rowHeads ? 'say.rows' : 'say.rows.hidden'),
      say(printed.columnHeads ? 'say.columns' : 'say.columns.hidden'),
      say(`say.${responseTo(printed)}`),
      ...(hasExtra(printed) ? [say('say.extra')] : []),
    ],
    show: (printed) =>
      responseTo(printed) === 'cut' ? `${say('show')} ${say('show.cut')}` : say('show'),
    describe: (printed) => description(say, wording, printed),
    answer: (printed, key) => answerText(say, wording, printed, key),
  };
}

function hasExtra({ rows, loose = [] }: Printed): boolean {
  return loose.length > rows.flat().filter((figure) => figure === null).length;
}

function description(say: SayTable, wording: Wording, printed: Printed): string {
  const { rows, columnHeads, loose } = printed;
  const columns = rows[0]?.length ?? 0;
  const size = {
    rows: rows.length,
    down: wording.number(rows.length),
    columns,
    across: wording.number(columns),
  };
  const heads =
    columnHeads && wording.inParts(columnHeads.map((head) => headPhrase(wording, head, printed)));
  const below =
    loose && wording.inParts(loose.map((figure) => wording.among(figuresOf(printed), figure)));
  return [
    say('describe.table', size),
    ...(heads === undefined ? [] : [say('describe.heads', { heads })]),
    ...rows.map((_, row) => rowText(say, wording, printed, row)),
    ...(below === undefined ? [] : [say('describe.below', { names: below })]),
  ].join(' ');
}

function rowText(say: SayTable, wording: Wording, printed: Printed, row: number): string {
  const all = figuresOf(printed);
  const names = wording.inRow(
    (printed.rows[row] ?? []).map((figure) =>
      figure ? wording.among(all, figure) : say('describe.empty'),
    ),
  );
  const head = printed.rowHeads?.[row];
  const place = row + 1;
  return head
    ? say('describe.row.about', { place, names, head: headPhrase(wording, head, printed) })
    : say('describe.row', { place, names });
}

/** The one thing that a head shows. */
function headPhrase(wording: Wording, head: Head, printed: Printed): string {
  const { form, colour, size } = head;
  if (form !== undefined) return wording.figure(head);
  const heads = [printed.rowHeads, printed.columnHeads].find((list) => list?.includes(head)) ?? [];
  const sizes = heads.map((other) => other.size ?? 1);
  return wording.list([
    ...(size === undefined ? [] : [wording.size(sizes, size)]),
    ...(colour === undefined ? [] : [wording.colour(colour)]),
  ]);
}

/** All figures that sizes are ranked among. */
function figuresOf(printed: Printed): readonly Figure[] {
  const { rows, loose = [], rowHeads = [], columnHeads = [] } = printed;
  const shown = [...rows.flat(), ...loose].filter((figure) => figure !== null);
  const sized = [...rowHeads, ...columnHeads].filter(({ size }) => size !== undefined);
  return [...shown, ...sized];
}

function answerText(say: SayTable, wording: Wording, printed: Printed, key: unknown): string {
  const { figures } = answerSchema.parse(key);
  const all = [...figuresOf(printed), ...figures];
  const columns = printed.rows[0]?.length ?? 1;
  const empty = printed.rows.flat().flatMap((figure, cell) => (figure === null ? [cell] : []));
  const cells = empty.map((cell, index) =>
    say('answer.cell', {
      name: wording.among(all, figures[index] ?? {}),
      row: wording.ordinal(Math.floor(cell / columns)),
      column: wording.ordinal(cell % columns),
    }),
  );
  return say('answer', { cells: wording.list(cells) });
}
