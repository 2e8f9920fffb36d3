// What the wishes for plans say; fetched with the first screen that plans.

import type { HOME_PAPERS, PrintStyle } from '../../page/index.ts';
import type { MaterialKind } from '../../plan/index.ts';
import { piecesOf } from '../speaking/pieces.ts';
import { spoken } from '../speaking/spoken.ts';
import { MESSAGES } from './wishes-messages-en.ts';

export const words = spoken('app/wishes', MESSAGES, ({ say, plain, under }) => {
  const minuteName = (minutes: number) => say('minuteName', { minutes });
  return {
    ...plain,
    counted: piecesOf((controls) => say('counted', controls), ['supplies']),
    minuteNames: { 5: minuteName(5), 10: minuteName(10), 15: minuteName(15), 20: minuteName(20) },
    papers: under('papers') satisfies Readonly<Record<(typeof HOME_PAPERS)[number], string>>,
    prints: under('prints') satisfies Readonly<Record<PrintStyle['print'], string>>,
    thingNames: under('thingNames') satisfies Readonly<Record<MaterialKind, string>>,
  };
});
