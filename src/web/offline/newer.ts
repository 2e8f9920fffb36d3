// The service worker as the app sees it: begun once the app is there, and whether a newer version waits.
import { CHANGE_OVER, HERE, prefixOf } from './messages.ts';

/** Least time between two looks for a newer version when the app comes into view again, in ms: an hour. */
const LOOK_AGAIN_MS = 3_600_000;

export interface Newer {
  readonly isReady: () => boolean;
  readonly onReady: (tell: () => void) => () => void;
  /** Puts the newer version in force in all tabs; answers once it is. */
  readonly takeOver: () => Promise<void>;
}

/** Begins it where the browser has service workers and the app was built with one; elsewhere nothing is ever newer. */
export function startNewer(): Newer {
  const tellings = new Set<() => void>();
  let isReady = false;
  let registration: ServiceWorkerRegistration | undefined;
  const ready = () => {
    isReady = true;
    for (const tell of tellings) tell();
  };
  const version = document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content;
  // Absent over plain http from another machine, and in private windows of some browsers.
  if (version && 'serviceWorker' in navigator) {
    void afterLoad()
      .then(() => registered(version, ready))
      .then((done) => {
        registration = done;
      })
      // A browser that refuses one still has the app as it is.
      .catch(() => {});
  }
  return {
    isReady: () => isReady,
    onReady: (tell) => {
      tellings.add(tell);
      return () => tellings.delete(tell);
    },
    takeOver: async () => {
      const waiting = registration?.waiting;
      // Another tab may have put it in force already.
      if (!waiting) return;
      const inForce = new Promise((resolve) => {
        navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
      });
      waiting.postMessage(CHANGE_OVER);
      await inForce;
    },
  };
}

/** Storing all files must not be in the way of showing the first page. */
function afterLoad(): Promise<void> {
  if (document.readyState === 'complete') return Promise.resolve();
  return new Promise((resolve) => {
    window.addEventListener('load', () => resolve(), { once: true });
  });
}

async function registered(version: string, ready: () => void): Promise<ServiceWorkerRegistration> {
  const { serviceWorker } = navigator;
  let wasControlled = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    // The first one is that of this very version.
    if (wasControlled) ready();
    wasControlled = true;
  });
  const registration = await serviceWorker.register(new URL('sw.js', document.baseURI), {
    updateViaCache: 'none',
  });
  const lookAt = (worker: ServiceWorker | null) => {
    // Without one in force it is the first.
    if (worker?.state === 'installed' && registration.active !== null) ready();
  };
  lookAt(registration.waiting);
  const follow = (worker: ServiceWorker | null) =>
    worker?.addEventListener('statechange', () => lookAt(worker));
  follow(registration.installing);
  registration.addEventListener('updatefound', () => follow(registration.installing));
  holdFiles(prefixOf(registration.scope) + version);
  lookNowAndThen(registration);
  return registration;
}

/** As long as this tab is open the files of its version stay in store. */
function holdFiles(name: string): void {
  void navigator.locks?.request(name, { mode: 'shared' }, () => {
    navigator.serviceWorker.controller?.postMessage(HERE);
    return new Promise(() => {});
  });
}

/** An installed app may stay open for weeks: the browser itself looks only when a page is loaded. */
function lookNowAndThen(registration: ServiceWorkerRegistration): void {
  let last = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - last < LOOK_AGAIN_MS) return;
    last = Date.now();
    registration.update().catch(() => {});
  });
}
