// One measure of the press in a process of its own: `time`, `pressing` or `making` so many pages, told as JSON.
import { closeSync, openSync, readFileSync, writeFileSync, writeSync } from 'node:fs';
import { deflateSync, inflateSync } from 'node:zlib';
import { keepHeapSmall } from '../src/cli/heap.ts';
import type { Page } from '../src/page/index.ts';
import { svgOf } from '../src/press/index.ts';
import { pagesToPress, pressed, roundsOf } from './press-pages.ts';
import { plainStream } from './press-plain.ts';

const ROUNDS = 5;
const [, , what, count = '', folder = ''] = process.argv;
const FILE = `${folder}/pressed.pdf`;

const font = (name: string) => new Uint8Array(readFileSync(`assets/fonts/Andika-${name}.ttf`));
const FONTS = { regular: font('Regular'), bold: font('Bold') };

/** Processor time of this process in ms: what others do on the machine counts little. */
const processorMs = () => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Written to a file as pages are made, as the command line does. */
async function press(pages: Iterable<Page>): Promise<void> {
  const file = openSync(FILE, 'w');
  await pressed(pages, FONTS, (chunk) => writeSync(file, chunk));
  closeSync(file);
}

interface Streams {
  readonly pages: readonly Buffer[];
  /** Figures that are kept once, in the order of their names. */
  readonly stamps: readonly Buffer[];
}

/** The content streams of the file that was just written. */
function contentStreams(): Streams {
  const pdf = readFileSync(FILE);
  const [pages, stamps]: [Buffer[], Buffer[]] = [[], []];
  const MARK = '>>stream\n';
  for (let at = pdf.indexOf(MARK); at >= 0; at = pdf.indexOf(MARK, at + 1)) {
    const dictionary = pdf.subarray(Math.max(0, at - 200), at).toString('latin1');
    const [, kind, length] =
      /obj\n<<(\/Subtype\/Form\S+ \S+ \S+ \S+<<>>)?\/Filter\/FlateDecode\/Length (\d+)$/.exec(
        dictionary,
      ) ?? [];
    if (length === undefined) continue;
    const start = at + MARK.length;
    const stream = inflateSync(pdf.subarray(start, start + Number(length)));
    if (kind !== undefined) stamps.push(stream);
    else if (stream.includes(' cm\n')) pages.push(stream);
  }
  return { pages, stamps };
}

/** What the pages would be without anything shared. */
function plainStreams({ pages, stamps }: Streams): readonly Buffer[] {
  const named = new Map(
    stamps.map((stamp, place) => [`S${place + 1}`, stamp.toString('latin1')] as const),
  );
  return pages.map((page) => Buffer.from(plainStream(page.toString('latin1'), named), 'latin1'));
}

async function time(pages: number): Promise<object> {
  const made = [...pagesToPress(pages)];
  const wall = await roundsOf(
    () => press(made),
    ROUNDS,
    () => performance.now(),
  );
  const processor = await roundsOf(() => press(made), ROUNDS, processorMs);
  const streams = contentStreams();
  const packed = async (all: readonly Buffer[]) => {
    const deflate = async () => {
      writeFileSync(`${folder}/limit.bin`, Buffer.concat(all.map((each) => deflateSync(each))));
    };
    return roundsOf(deflate, ROUNDS, processorMs);
  };
  const limit = await packed([...streams.pages, ...streams.stamps]);
  const plainLimit = await packed(plainStreams(streams));
  const style = '<style>@page{size:A4;margin:0}svg{display:block;page-break-after:always}</style>';
  writeFileSync(`${folder}/pages.html`, style + made.map((page) => svgOf(page)).join(''));
  const counts = { streams: streams.pages.length, stamps: streams.stamps.length };
  return { wall, processor, limit, plainLimit, ...counts, bytes: readFileSync(FILE).length };
}

/** Peak memory in KiB; not what the system tells of resources used, which begins with what the parent held (proc(5)). */
async function peakKib(pages: Iterable<Page>): Promise<number> {
  await press(pages);
  const [, peak] = /VmHWM:\s+(\d+) kB/.exec(readFileSync('/proc/self/status', 'utf8')) ?? [];
  return Number(peak);
}

/** The same few pages over and over: memory for the press alone. */
function* pagesAgain(count: number): Generator<Page> {
  const few = [...pagesToPress(36)];
  for (let done = 0; done < count; done += few.length) yield* few.slice(0, count - done);
}

const MEASURES = {
  time,
  pressing: (pages: number) => peakKib(pagesAgain(pages)),
  making: (pages: number) => peakKib(pagesToPress(pages)),
};
// As the command line does.
keepHeapSmall();
const measure = MEASURES[what as keyof typeof MEASURES];
console.log(JSON.stringify(await measure(Number(count))));
