// The press in a worker of a browser: gets the fonts, tells how long its rounds took, in ms.
import { pagesToPress, pressed, roundsOf } from './press-pages.ts';

const ROUNDS = 5;

interface Order {
  readonly pages: number;
  readonly regular: string;
  readonly bold: string;
}

const bytesOf = (base64: string) =>
  Uint8Array.from(atob(base64), (character) => character.charCodeAt(0));

self.addEventListener('message', async ({ data }: MessageEvent<Order>) => {
  const made = [...pagesToPress(data.pages)];
  const fonts = { regular: bytesOf(data.regular), bold: bytesOf(data.bold) };
  const press = async () => {
    const chunks: Uint8Array[] = [];
    await pressed(made, fonts, (chunk) => chunks.push(chunk));
  };
  self.postMessage(await roundsOf(press, ROUNDS, () => performance.now()));
});
