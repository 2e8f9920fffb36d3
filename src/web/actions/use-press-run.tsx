// The state of one run of the press, from its start to what came of it.
import { type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import { startPress } from '../making/press.ts';
import type { PressAs, PressNews, PressWhat } from '../making/protocol.ts';
import { sentencesOf } from '../making/reply-form.ts';
import { holdChangeOver } from '../offline/holds.ts';
import { picturesNow } from '../pictures/pictures-now.ts';
import { languageNow } from '../speaking/language-now.ts';
import { words } from '../words.ts';
import { fileName } from './file-name.ts';
import { FileSaid } from './file-said.tsx';
import { isFirstPrint } from './first-print.ts';
import { recallMeasure } from './measured.ts';
import { startPrinting } from './print-pages.ts';
import { saveFile } from './save-file.ts';

export interface PressRun {
  /** Absent: nothing runs. `share` goes from 0 to 1. */
  readonly progress?: { readonly words: string; readonly share: number };
  /** What came of the last run, in words. */
  readonly outcome: ReactNode;
}

/** Making and proving takes about as long as writing; each is half of the way. */
const MAKING_SHARE = 0.5;

const AT_REST: PressRun = { outcome: '' };

export interface PressRunState {
  readonly run: PressRun;
  /** Begins anew, also where another run is under way. */
  readonly start: (what: PressWhat, as: PressAs) => void;
  readonly cancel: () => void;
}

export function usePressRun(): PressRunState {
  const [run, setRun] = useState<PressRun>(AT_REST);
  const callOff = useRef<() => void>(undefined);
  useEffect(() => () => callOff.current?.(), []);
  const isRunning = run.progress !== undefined;
  useEffect(() => (isRunning ? holdChangeOver() : undefined), [isRunning]);
  const start = useCallback((what: PressWhat, as: PressAs) => {
    callOff.current?.();
    setRun({ progress: { words: words.starting, share: 0 }, outcome: '' });
    const measured = recallMeasure();
    const order = {
      ...what,
      as,
      language: languageNow(),
      ownPictures: picturesNow(),
      ...(measured === undefined ? {} : { measuredMm: measured }),
    };
    const printing = startPrinting();
    callOff.current = startPress(order, (news) => {
      if (news.kind === 'page') return printing.lay(news.page);
      if (news.kind === 'pages') void printing.print();
      setRun(afterNews(news, what, measured));
    });
  }, []);
  const cancel = useCallback(() => {
    callOff.current?.();
    setRun({ outcome: words.cancelled });
  }, []);
  return { run, start, cancel };
}

function afterNews(
  news: Exclude<PressNews, PageNews>,
  what: PressWhat,
  measuredMm: number | undefined,
): PressRun {
  switch (news.kind) {
    case 'making':
      return {
        progress: {
          words: words.making(news.done, news.total),
          share: (MAKING_SHARE * news.done) / news.total,
        },
        outcome: '',
      };
    case 'writing':
      return {
        progress: {
          words: words.pressing(news.done),
          share: MAKING_SHARE + ((1 - MAKING_SHARE) * news.done) / news.total,
        },
        outcome: '',
      };
    case 'pdf':
    case 'zip':
      return savedAs(news, what, 'rulerFor' in what ? undefined : measuredMm);
    case 'pack': {
      const name = fileName(what, 'json');
      saveFile(name, 'application/json', news.bytes);
      return { outcome: <FileSaid pieces={words.saved} name={name} /> };
    }
    case 'pages':
      return { outcome: firstPrintWords(what) };
    case 'refused':
      return { outcome: sentencesOf(news.objections) };
    case 'broken':
      return { outcome: words.defect(news.detail) };
  }
}

type PageNews = { readonly kind: 'page' };

/** The pack's pages as a file. */
type BytesNews = { readonly kind: 'pdf' | 'zip'; readonly bytes: Uint8Array<ArrayBuffer> };

/** Says also what was made up for, so that nobody wonders about a page that is not as large as usual. */
function savedAs(
  { kind, bytes }: BytesNews,
  what: PressWhat,
  measuredMm: number | undefined,
): PressRun {
  const name = fileName(what, kind);
  saveFile(name, `application/${kind}`, bytes);
  const more = measuredMm === undefined ? firstPrintWords(what) : words.trueSize.madeUp(measuredMm);
  return {
    outcome: (
      <>
        <FileSaid pieces={words.saved} name={name} />
        {more === '' ? '' : ` ${more}`}
      </>
    ),
  };
}

/** A nudge to measure the first sheets that are printed; empty for all others, and for what needs no printer. */
function firstPrintWords(what: PressWhat): string {
  const isOfSheets = 'entries' in what && what.entries.made !== 'by-hand';
  return isOfSheets && isFirstPrint() ? words.trueSize.first : '';
}
