// What the adult's page says of each kind of sheet, and of the goals that the sheets serve.
import type { Language } from '../activities/index.ts';
import { type Block, heading, type LeadRow, leadRows, paragraph, together } from '../page/index.ts';
import { SMALL_EM_MM, section } from './adult-blocks.ts';
import type { Piece } from './adult-flow.ts';
import { servedGoals } from './goals-served.ts';
import type { Pack } from './pack.ts';
import { type PackPart, packParts } from './pack-parts.ts';
import { pageWords } from './page-catalogue.ts';
import type { AdultWords } from './page-words.ts';
import { partThings } from './part-things.ts';

const PART_GAP_MM = 4;

/** Each kind of sheet, the first of them below the heading of all. */
export function partPieces(pack: Pack, language: Language): readonly Piece[] {
  const words = pageWords(language).adult;
  const parts = packParts(pack, language);
  return parts.map((part, index) => (width) => {
    const things = parts.length > 1 ? partThings(part.materials, language) : undefined;
    const block = partBlock(part, things, words, width);
    return index > 0 ? block : section([heading(words.start, width, 2), block]);
  });
}

/** `things`: what is laid out for this kind alone; absent: it is the only one. */
function partBlock(
  part: PackPart,
  things: string | undefined,
  words: AdultWords,
  width: number,
): Block {
  const { guide } = part;
  const title = words.partHeading(part.name, part.sheetNumbers);
  const rows: readonly LeadRow[] = [
    ...(things === undefined ? [] : [{ lead: words.layOut, words: things }]),
    { lead: words.say, words: words.sayWords(part.say.join(' ')) },
    { lead: words.show, words: words.showOne(part.show, part.showSheet) },
    ...(part.help.length > 0 ? [{ lead: words.helpHere, words: part.help.join(' ') }] : []),
    { lead: words.easier, words: part.easierNow },
    { lead: words.harder, words: part.harderNow },
    { lead: words.lookFor, words: part.lookFor.join(' ') },
    { lead: words.takes, words: words.minutes(part.minutes, part.name.sheets, part.ages) },
  ];
  return together(
    [
      paragraph(title, width, { weight: 'bold', emMm: SMALL_EM_MM }),
      leadRows(rows, width, SMALL_EM_MM),
      ...(guide ? [leadRows([{ lead: guide, words: guide.words }], width, SMALL_EM_MM)] : []),
    ],
    PART_GAP_MM,
  );
}

/** Each curriculum that the pack names, with its goals and the sheets that serve them; none where it names none. */
export function goalsPieces(pack: Pack, language: Language): readonly Piece[] {
  const words = pageWords(language).goals;
  return servedGoals(pack, language).map(({ framework, goals }, index) => (width) => {
    const small = { emMm: SMALL_EM_MM };
    const block = together(
      [
        paragraph(words.frameworks[framework], width, { ...small, weight: 'bold' }),
        paragraph(words.served(goals), width, small),
      ],
      PART_GAP_MM,
    );
    return index > 0
      ? block
      : section([heading(words.title, width, 2), paragraph(words.note, width, small), block]);
  });
}
