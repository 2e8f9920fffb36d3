// The service worker: keeps all files of its version, and those of older versions as long as a tab runs on them.
import { CHANGE_OVER, HERE, prefixOf } from './messages.ts';

declare const self: ServiceWorkerGlobalScope;
/** Told by the build: the version, and each file of it with its hash as Subresource Integrity writes it. */
declare const SAMEWISE_VERSION: string;
declare const SAMEWISE_FILES: readonly (readonly [name: string, integrity: string])[];

const scope = self.registration.scope;
const prefix = prefixOf(scope);
const own = prefix + SAMEWISE_VERSION;
/** What is named by its content: it never changes, so any version may lend it to another. */
const assets = new URL('assets/', scope).href;
const AT_ONCE = 4;
/** What a server says of its answers does not matter for what is stored. */
const ANY = { ignoreVary: true } as const;

self.addEventListener('install', (event) => event.waitUntil(storeAll()));

// Whoever opened the app for the first time has it offline from then on, without opening it anew.
self.addEventListener('activate', (event) => event.waitUntil(self.clients.claim()));

self.addEventListener('message', (event) => {
  if (event.data === CHANGE_OVER) event.waitUntil(self.skipWaiting());
  if (event.data === HERE) event.waitUntil(tidy());
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(scope)) return;
  event.respondWith(answer(request));
});

/** All files or none: a file that is missing or another than expected leaves the version before in force. */
async function storeAll(): Promise<void> {
  const cache = await caches.open(own);
  const waiting = [...SAMEWISE_FILES];
  const storeNext = async (): Promise<void> => {
    const next = waiting.shift();
    if (next === undefined) return;
    await storeFile(cache, ...next);
    await storeNext();
  };
  await Promise.all(Array.from({ length: AT_ONCE }, storeNext));
}

async function storeFile(cache: Cache, name: string, integrity: string): Promise<void> {
  const address = new URL(name, scope).href;
  const stored = address.startsWith(assets) ? await lookUp(address) : undefined;
  const isRight = stored !== undefined && (await integrityOf(stored.clone())) === integrity;
  const file = isRight ? stored : await fetch(address, { integrity, cache: 'no-cache' });
  if (!file.ok) throw new Error(`${name}: expected the file, got status ${file.status}`);
  await cache.put(address, file);
}

async function integrityOf(file: Response): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', await file.arrayBuffer());
  return `sha256-${btoa(String.fromCharCode(...new Uint8Array(hash)))}`;
}

async function answer(request: Request): Promise<Response> {
  const address = request.url.replace(/[?#].*$/, '').replace(/\/index\.html$/, '/');
  const stored = await lookUp(address);
  if (stored !== undefined) return stored;
  if (request.mode !== 'navigate') return fetch(request);
  // An address that is no file of the app: without a network it leads to the app itself.
  return fetch(request).catch(() => Response.redirect(scope));
}

/** The file from this version or, if it never changes, from any that is still in store. */
async function lookUp(address: string): Promise<Response | undefined> {
  const cache = await caches.open(own);
  const found = await cache.match(address, ANY);
  if (found !== undefined || !address.startsWith(assets)) return found;
  for (const name of await storedVersions()) {
    const lent = await caches.match(address, { ...ANY, cacheName: name });
    if (lent !== undefined) return lent;
  }
  return undefined;
}

async function storedVersions(): Promise<readonly string[]> {
  return (await caches.keys()).filter((name) => name.startsWith(prefix));
}

/**
 * Deletes versions that no tab runs on. Each tab holds a lock of its version's name; as long as one has not yet said
 * which it is, or where the browser has no locks, nothing is deleted.
 */
async function tidy(): Promise<void> {
  if (!('locks' in navigator)) return;
  const { held = [] } = await navigator.locks.query();
  const used = held.flatMap(({ name = '' }) => (name.startsWith(prefix) ? [name] : []));
  const windows = await self.clients.matchAll({ type: 'window', includeUncontrolled: true });
  if (windows.filter(({ url }) => url.startsWith(scope)).length > used.length) return;
  const { active, waiting, installing } = self.registration;
  // Another worker than this one is on its way: its files are not to be told from those of no use.
  if (waiting !== null || installing !== null || active?.state !== 'activated') return;
  const unused = (await storedVersions()).filter((name) => name !== own && !used.includes(name));
  await Promise.all(unused.map((name) => caches.delete(name)));
}
