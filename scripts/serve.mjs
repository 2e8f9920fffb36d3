// Serves the built web app, to this machine alone unless asked, with headers that let it load nothing from elsewhere.
import { createHash } from 'node:crypto';
import { createServer } from 'node:http';
import sirv from 'sirv';
import { addressOf, isForThisMachine, isLoopback, THIS_MACHINE } from './host.mjs';

const FIRST_PORT = 4173;
const PORTS_TRIED = 50;

/** The two style elements that react-aria puts in the page; any other inline style is refused. */
const STYLES_OF_REACT_ARIA = [
  '@layer {\n  [data-react-aria-pressable] {\n    touch-action: pan-x pan-y pinch-zoom;\n  }\n}',
  '@layer {\n  * {\n    overscroll-behavior: contain;\n  }\n}',
].map((style) => `'sha256-${createHash('sha256').update(style).digest('base64')}'`);

const POLICY = [
  "default-src 'self'",
  // WebAssembly alone, for what shapes names in other scripts; no text is ever run.
  "script-src 'self' 'wasm-unsafe-eval'",
  `style-src 'self' ${STYLES_OF_REACT_ARIA.join(' ')}`,
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** A file of the build that is named by its content never changes; each other one is asked for anew. */
const BY_CONTENT = /\/assets\/[^/]+$/;
const FOR_GOOD = 'public, max-age=31536000, immutable';

const HEADERS = {
  'Content-Security-Policy': POLICY,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  // The camera reads the code of a sheet; nothing else of the machine is ever asked for.
  'Permissions-Policy': 'camera=(self), geolocation=(), microphone=(), payment=(), usb=()',
};

/**
 * Serves `folder` on `host`, by default to this machine alone: on `port`, or without one on 4173 or the next free
 * port. Rejects with the code EADDRINUSE where no such port is free.
 */
export async function serveWeb({ folder, port, host = THIS_MACHINE }) {
  const files = sirv(folder, { dev: true, etag: true });
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
    const refused = refusalOf(request, host);
    if (refused !== undefined) return end(response, ...refused);
    // Files are short: a part of one is never needed, and a range can be one that there is not.
    delete request.headers.range;
    if (BY_CONTENT.test(pathOf(request))) response.setHeader('Cache-Control', FOR_GOOD);
    files(request, response, () => {
      response.removeHeader('Cache-Control');
      end(response, ...NO_SUCH_PAGE);
    });
  });
  const ports =
    port === undefined
      ? Array.from({ length: PORTS_TRIED }, (_, index) => FIRST_PORT + index)
      : [port];
  const taken = await listenOnFirstFree(server, host, ports);
  return { address: addressOf(host, taken), port: taken, close: () => closeAll(server) };
}

const NO_SUCH_PAGE = [404, 'There is no such page here.'];

/** Status and sentence for a request that no file is looked for. */
function refusalOf(request, host) {
  if (isLoopback(host) && !isForThisMachine(request.headers.host)) {
    return [421, 'This server answers to the name of this machine alone.'];
  }
  if (request.method !== 'GET' && request.method !== 'HEAD')
    return [405, 'Here one can only read.'];
  return isPlain(pathOf(request)) ? undefined : NO_SUCH_PAGE;
}

function pathOf(request) {
  return request.url.split('?')[0];
}

/** Whether a path, however it is written, names what lies in the folder and leads nowhere else. */
function isPlain(path) {
  try {
    const decoded = decodeURIComponent(path);
    return !/[\0\\]/.test(decoded) && !decoded.split('/').some((part) => /^\.\.?$/.test(part));
  } catch {
    return false;
  }
}

function end(response, status, sentence) {
  response.statusCode = status;
  response.end(sentence);
}

async function listenOnFirstFree(server, host, [port, ...others]) {
  try {
    await listen(server, host, port);
    return server.address().port;
  } catch (error) {
    if (error.code !== 'EADDRINUSE' || others.length === 0) throw error;
    return listenOnFirstFree(server, host, others);
  }
}

function listen(server, host, port) {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function closeAll(server) {
  server.closeAllConnections();
  return new Promise((resolve) => server.close(resolve));
}
