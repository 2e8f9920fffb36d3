// The server of `npm start`: for this machine alone unless asked, for its own files alone, and not to be felled.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { connect } from 'node:net';
import { networkInterfaces, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Served, serveWeb } from '../scripts/serve.mjs';
import { readStartOptions, readyLines } from '../scripts/start-options.mjs';

const START = fileURLToPath(new URL('../scripts/start.mjs', import.meta.url));

/** A folder with a page, beside a file that is nobody's business. */
function newSite(): string {
  const around = mkdtempSync(join(tmpdir(), 'samewise-site-'));
  writeFileSync(join(around, 'secret.txt'), 'secret');
  mkdirSync(join(around, 'web', 'assets'), { recursive: true });
  mkdirSync(join(around, 'web-of-others'));
  writeFileSync(join(around, 'web-of-others', 'secret.txt'), 'secret');
  writeFileSync(join(around, 'web', 'index.html'), 'the page');
  writeFileSync(join(around, 'web', 'assets', 'a.js'), 'a script');
  return join(around, 'web');
}

let [own, open]: Served[] = [];
beforeAll(async () => {
  own = await serveWeb({ folder: newSite() });
  open = await serveWeb({ folder: newSite(), host: '0.0.0.0' });
});
afterAll(async () => {
  await own?.close();
  await open?.close();
});

interface Asked {
  readonly path?: string;
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly server?: Served | undefined;
  readonly hostname?: string;
}

/** Asks with the path as it is written, which a browser would tidy up first. */
function ask({ path = '/', server = own, hostname = '127.0.0.1', ...rest }: Asked = {}) {
  return new Promise<{ readonly status: number; readonly body: string }>((resolve, reject) => {
    const asking = request({ hostname, port: server?.port, path, ...rest }, (response) => {
      let body = '';
      response.on('data', (piece: Buffer) => {
        body += piece.toString();
      });
      response.on('end', () => resolve({ status: response.statusCode ?? 0, body }));
    });
    asking.on('error', reject);
    asking.end();
  });
}

/** Sends the very bytes, and gives the first line of the answer. */
function tell(bytes: string): Promise<string> {
  return new Promise((resolve, reject) => {
    const socket = connect(own?.port ?? 0, '127.0.0.1', () => socket.end(bytes));
    let said = '';
    socket.on('data', (piece) => {
      said += piece.toString();
    });
    socket.on('close', () => resolve(said.split('\r\n')[0] ?? ''));
    socket.on('error', reject);
  });
}

/** Addresses of this machine that others on a network reach it by. */
function outerAddresses(): readonly string[] {
  const all = Object.values(networkInterfaces()).flatMap((each) => each ?? []);
  return all.flatMap(({ internal, family, address }) =>
    !internal && family === 'IPv4' ? [address] : [],
  );
}

describe('who may ask', () => {
  test('by default nobody reaches the server but through this machine’s own address', async () => {
    expect(own?.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    for (const hostname of outerAddresses()) {
      await expect(ask({ hostname })).rejects.toMatchObject({ code: 'ECONNREFUSED' });
    }
  });

  test.each(['localhost', '127.0.0.1', '[::1]', 'LOCALHOST'])(
    'as %s it answers, with and without a port',
    async (name) => {
      for (const host of [name, `${name}:${own?.port}`]) {
        expect(await ask({ headers: { host } })).toEqual({ status: 200, body: 'the page' });
      }
    },
  );

  test.each([
    'rebound.example',
    'localhost.rebound.example',
    'rebound.example:4173',
    '127.0.0.1.rebound.example',
    'localhost@rebound.example',
    '192.168.0.1',
    '0.0.0.0',
  ])('as “%s” it gives nothing: such a name was made to lead here from elsewhere', async (host) => {
    expect(await ask({ headers: { host } })).toMatchObject({ status: 421 });
    expect(await ask({ headers: { host }, path: '/assets/a.js' })).toMatchObject({ status: 421 });
  });

  test('with an address of the network it answers whoever reaches it, by any name', async () => {
    for (const hostname of ['127.0.0.1', ...outerAddresses()]) {
      expect(await ask({ server: open, hostname })).toMatchObject({ status: 200 });
      const headers = { host: 'play-room.local' };
      expect(await ask({ server: open, hostname, headers })).toMatchObject({ status: 200 });
    }
  });
});

describe('what it gives', () => {
  const PATHS = [
    '/../secret.txt',
    '/assets/../../secret.txt',
    '/assets/../index.html',
    '/..',
    '/.',
    '/./index.html',
    '/%2e%2e/secret.txt',
    '/%2E%2e/secret.txt',
    '/.%2e/secret.txt',
    '/%2e%2e%2fsecret.txt',
    '/..%2fsecret.txt',
    '/%252e%252e/secret.txt',
    '/..\\secret.txt',
    '/..%5csecret.txt',
    '/%5c..%5csecret.txt',
    '/../web-of-others/secret.txt',
    '/%00',
    '/index.html%00',
    '/index.html%00.js',
    '/%c0%ae%c0%ae/secret.txt',
    '/%',
    '/%zz',
    '/%e0%a4%a',
    '//etc/passwd',
    '/etc/passwd',
    '/file:///etc/passwd',
    'http://elsewhere.example/secret.txt',
  ];

  test.each(PATHS)('nothing at %s', async (path) => {
    const { status, body } = await ask({ path });
    expect(status).toBe(404);
    expect(body).not.toContain('secret');
  });

  test('its files, for reading alone', async () => {
    expect(await ask({ path: '/assets/a.js?x=..' })).toEqual({ status: 200, body: 'a script' });
    for (const method of ['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS', 'TRACE']) {
      expect(await ask({ method }), method).toMatchObject({ status: 405 });
    }
    expect(await ask({ method: 'HEAD' })).toEqual({ status: 200, body: '' });
  });

  test.each([
    'bytes=9-3',
    'bytes=-5',
    'bytes=3-',
    'bytes=a-b',
    'bytes=99999-',
    'bytes=0-0,2-3',
    'x',
  ])('the whole file when asked for the range %s, and it goes on serving', async (range) => {
    expect(await ask({ headers: { range } })).toEqual({ status: 200, body: 'the page' });
    expect(await ask()).toMatchObject({ status: 200 });
  });

  test.each([
    'GET\r\n\r\n',
    'GET / HTTP/1.1\r\n\r\n',
    'GET / HTTP/1.1\r\nHost:\r\n\r\n',
    'GET / HTTP/1.0\r\n\r\n',
    'GET / HTTP/9.9\r\nHost: localhost\r\n\r\n',
    `GET /${'a'.repeat(100_000)} HTTP/1.1\r\nHost: localhost\r\n\r\n`,
    '\0\0\0\0\r\n\r\n',
  ])('an error for what is no request (case %#), and it goes on serving', async (bytes) => {
    expect(await tell(bytes)).toMatch(/^HTTP\/1\.1 4\d\d /);
    expect(await ask()).toMatchObject({ status: 200 });
  });
});

describe('npm start', () => {
  test('listens to this machine unless told otherwise', () => {
    expect(readStartOptions([])).toEqual({ port: undefined, host: '127.0.0.1' });
    expect(readStartOptions(['--port', '5000'])).toEqual({ port: 5000, host: '127.0.0.1' });
    expect(readStartOptions(['--host', '0.0.0.0'])).toEqual({ port: undefined, host: '0.0.0.0' });
    expect(readStartOptions(['--host', '::'])).toMatchObject({ host: '::' });
  });

  test.each([
    [['--host', 'everyone'], /^host: expected an IP address .* got everyone\.$/],
    [['--host', ''], /^host: expected an IP address/],
    [['--host', 'example.org'], /^host: expected an IP address/],
    [['--port', '0'], /^port: expected a whole number from 1 to 65535, got 0\.$/],
    [['--open'], /The options are --port and --host\.$/],
  ])('refuses %j and says why, before anything is built', (words, reason) => {
    expect(() => readStartOptions(words)).toThrow(reason);
    const { status, stderr } = spawnSync(process.execPath, [START, ...words], { encoding: 'utf8' });
    expect(status).toBe(2);
    expect(stderr.trim()).toMatch(reason);
  });

  test('says plainly that others can open it where they can, and only there', () => {
    const port = 4173;
    const here = readyLines({ host: '127.0.0.1', port, address: 'http://127.0.0.1:4173/' });
    expect(here.join('\n')).toContain('Samewise is ready: http://127.0.0.1:4173/');
    expect(here.join('\n')).not.toMatch(/network/);
    const address = 'http://192.0.2.7:4173/';
    const there = readyLines({ host: '192.0.2.7', port, address }).join('\n');
    expect(there).toContain(
      'Everyone on the same network can open it too:\n    http://192.0.2.7:4173/',
    );
    expect(readyLines({ host: '::1', port, address: 'http://[::1]:4173/' }).join('\n')).not.toMatch(
      /network/,
    );
  });
});
