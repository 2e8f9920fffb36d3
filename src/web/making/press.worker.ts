// The worker that makes a whole pack and writes it as a PDF, or draws its pages for the browser to print.
import boldUrl from '../../../assets/fonts/Andika-Bold.ttf?url';
import regularUrl from '../../../assets/fonts/Andika-Regular.ttf?url';
import { knowTold } from '../pictures/know-told.ts';
import { loadFile } from './load-file.ts';
import { pressPack } from './press-pack.ts';
import { printIn } from './print-in.ts';
import type { PressNews, PressOrder } from './protocol.ts';
import { loadScriptsOf } from './script-fonts.ts';

self.addEventListener('message', async (event: MessageEvent<PressOrder>) => {
  const tell = inTime((news) =>
    self.postMessage(news, 'bytes' in news ? { transfer: [news.bytes.buffer] } : {}),
  );
  try {
    knowTold(event.data);
    await printIn(event.data.language);
    // Names and remarks may be in any script; all words of an order are plain data.
    await loadScriptsOf(JSON.stringify(event.data));
    await pressPack(event.data, loadFonts, tell);
  } catch (defect) {
    tell({ kind: 'broken', detail: defect instanceof Error ? defect.message : String(defect) });
  }
});

/** More often than this nobody sees how far it is, in ms; the screen would be drawn for nothing. */
const NEWS_APART_MS = 50;

/** Leaves out what is said of progress shortly after the same was said. */
function inTime(tell: (news: PressNews) => void): (news: PressNews) => void {
  let last = -Infinity;
  return (news) => {
    if (news.kind === 'making' || news.kind === 'writing') {
      const now = performance.now();
      if (now - last < NEWS_APART_MS) return;
      last = now;
    }
    tell(news);
  };
}

async function loadFonts() {
  const [regular, bold] = await Promise.all([loadFile(regularUrl), loadFile(boldUrl)]);
  return { regular, bold };
}
