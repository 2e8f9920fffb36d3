// What `npm start` is asked for, and what it says once it serves.
import { parseArgs } from 'node:util';
import { addressesFromElsewhere, isHost, isLoopback, THIS_MACHINE } from './host.mjs';

const MOST_PORT = 65535;

/** The port (absent: the first free one) and the address to listen on; throws an `Error` whose message says what is wrong. */
export function readStartOptions(words) {
  const { port, host = THIS_MACHINE } = parsed(words);
  if (!isHost(host)) {
    throw new Error(
      `host: expected an IP address of this machine, such as 0.0.0.0 for all of them, got ${host}.`,
    );
  }
  return { port: port === undefined ? undefined : readPort(port), host };
}

/** The lines for the terminal once the app can be opened. */
export function readyLines({ host, port, address }) {
  const lines = ['', `  Samewise is ready: ${address}`];
  if (!isLoopback(host)) {
    lines.push(
      '',
      '  Everyone on the same network can open it too:',
      ...addressesFromElsewhere(host, port).map((each) => `    ${each}`),
      '  The pages come unencrypted. Records stay in the browser of whoever enters them.',
      '  Without --host only this machine can open it.',
    );
  }
  return [...lines, '', '  Ctrl+C stops it.'];
}

function readPort(given) {
  const number = Number(given);
  if (Number.isInteger(number) && number >= 1 && number <= MOST_PORT) return number;
  throw new Error(`port: expected a whole number from 1 to ${MOST_PORT}, got ${given}.`);
}

function parsed(args) {
  try {
    return parseArgs({ args, options: { port: { type: 'string' }, host: { type: 'string' } } })
      .values;
  } catch (error) {
    throw new Error(`${error.message} The options are --port and --host.`);
  }
}
