// Serves the built web app to this machine alone, with headers that let it load nothing from elsewhere.
import { createHash } from 'node:crypto';
import { createServer } from 'node:http';
import sirv from 'sirv';

const HOST = '127.0.0.1';
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
};

/**
 * Serves `folder` on 127.0.0.1: on `port`, or without one on 4173 or the next free port.
 * Rejects with the code EADDRINUSE where no such port is free.
 */
export async function serveWeb({ folder, port }) {
  const files = sirv(folder, { dev: true, etag: true });
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
    const [path] = request.url.split('?');
    if (BY_CONTENT.test(path)) response.setHeader('Cache-Control', FOR_GOOD);
    files(request, response, () => {
      response.removeHeader('Cache-Control');
      response.statusCode = 404;
      response.end('There is no such page here.');
    });
  });
  const ports =
    port === undefined
      ? Array.from({ length: PORTS_TRIED }, (_, index) => FIRST_PORT + index)
      : [port];
  const taken = await listenOnFirstFree(server, ports);
  return { address: `http://${HOST}:${taken}/`, close: () => closeAll(server) };
}

async function listenOnFirstFree(server, [port, ...others]) {
  try {
    await listen(server, port);
    return server.address().port;
  } catch (error) {
    if (error.code !== 'EADDRINUSE' || others.length === 0) throw error;
    return listenOnFirstFree(server, others);
  }
}

function listen(server, port) {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, HOST, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function closeAll(server) {
  server.closeAllConnections();
  return new Promise((resolve) => server.close(resolve));
}
