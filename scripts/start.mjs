// Starts the web app on this machine: installs and builds what is missing, serves it, prints its address.
import { parseArgs } from 'node:util';
import { buildWeb, WEB_FOLDER } from './build-web.mjs';
import { installPackages } from './install.mjs';

const MOST_PORT = 65535;

const port = readPort();
installPackages();
if (!buildWeb()) {
  console.error('The app could not be built; the lines above say why.');
  process.exit(1);
}
const { serveWeb } = await import('./serve.mjs');
try {
  const { address } = await serveWeb({ folder: WEB_FOLDER, port });
  console.log(`\n  Samewise is ready: ${address}\n\n  Ctrl+C stops it.`);
} catch (error) {
  console.error(
    error.code === 'EADDRINUSE'
      ? `port: ${port ?? '4173 and those after it'} is taken by another program. Give another one with --port.`
      : `The app could not be served: ${error.message}`,
  );
  process.exit(2);
}

/** The port that was asked for; absent: the first free one. */
function readPort() {
  const given = readOption();
  if (given === undefined) return undefined;
  const number = Number(given);
  if (Number.isInteger(number) && number >= 1 && number <= MOST_PORT) return number;
  console.error(`port: expected a whole number from 1 to ${MOST_PORT}, got ${given}.`);
  process.exit(2);
}

function readOption() {
  try {
    return parseArgs({ options: { port: { type: 'string' } } }).values.port;
  } catch (error) {
    console.error(`${error.message} The one option is --port.`);
    process.exit(2);
  }
}
