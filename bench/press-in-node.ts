// One measure of the press in a process of its own: `time`, `pressing` or `making` so many pages, told as JSON.
import { closeSync, openSync, readFileSync, writeFileSync, writeSync } from 'node:fs';
import { deflateSync, inflateSync } from 'node:zlib';
import { keepHeapSmall } from '../src/cli/heap.ts';
import type { Page } from '../src/page/index.ts';
import { svgOf } from '../src/press/index.ts';
import { pagesToPress, pressed, roundsOf } from './press-pages.ts';

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

/** The content streams of the pages of the file that was just written. */
function contentStreams(): readonly Buffer[] {
  const pdf = readFileSync(FILE);
  const streams: Buffer[] = [];
  const MARK = '>>stream\n';
  for (let at = pdf.indexOf(MARK); at >= 0; at = pdf.indexOf(MARK, at + 1)) {
    const dictionary = pdf.subarray(Math.max(0, at - 200), at).toString('latin1');
    const [, length] = /obj\n<<\/Filter\/FlateDecode\/Length (\d+)$/.exec(dictionary) ?? [];
    if (length === undefined) continue;
    const start = at + MARK.length;
    const stream = inflateSync(pdf.subarray(start, start + Number(length)));
    if (stream.includes(' cm\n')) streams.push(stream);
  }
  return streams;
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
  const deflate = async () => {
    writeFileSync(`${folder}/limit.bin`, Buffer.concat(streams.map((each) => deflateSync(each))));
  };
  const limit = await roundsOf(deflate, ROUNDS, processorMs);
  const style = '<style>@page{size:A4;margin:0}svg{display:block;page-break-after:always}</style>';
  writeFileSync(`${folder}/pages.html`, style + made.map((page) => svgOf(page)).join(''));
  return { wall, processor, limit, streams: streams.length, bytes: readFileSync(FILE).length };
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
