// Who may ask the server: this machine alone, unless an address of the network is asked for.
import { isIP } from 'node:net';
import { networkInterfaces } from 'node:os';

export const THIS_MACHINE = '127.0.0.1';

/** The names that a browser on this machine calls it by; a page elsewhere whose name leads here comes with its own. */
const OWN_NAMES = /^(localhost|127(\.\d{1,3}){3}|\[::1\])(:\d+)?$/i;

/** Whether only programs on this machine reach a server that listens on `host`. */
export function isLoopback(host) {
  return host === 'localhost' || host === '::1' || /^127\./.test(host);
}

/** Whether `host` is something that a server can listen on: an IP address or `localhost`. */
export function isHost(host) {
  return host === 'localhost' || isIP(host) !== 0;
}

/** Whether a request with this `Host` header was meant for this machine (DNS rebinding). */
export function isForThisMachine(header) {
  return header !== undefined && OWN_NAMES.test(header);
}

/** The address to open in a browser of this machine, for a server on `host`. */
export function addressOf(host, port) {
  const reached = host === '0.0.0.0' ? THIS_MACHINE : host === '::' ? '::1' : host;
  return `http://${isIP(reached) === 6 ? `[${reached}]` : reached}:${port}/`;
}

/** The addresses at which other machines reach a server on `host`, which is no loopback address. */
export function addressesFromElsewhere(host, port) {
  if (host !== '0.0.0.0' && host !== '::') return [addressOf(host, port)];
  return Object.values(networkInterfaces())
    .flat()
    .filter(({ internal, family }) => !internal && family === 'IPv4')
    .map(({ address }) => addressOf(address, port));
}
