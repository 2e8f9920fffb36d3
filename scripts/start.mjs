// Starts the web app on this machine: installs and builds what is missing, serves it, prints its address.
import { buildWeb, WEB_FOLDER } from './build-web.mjs';
import { installPackages } from './install.mjs';
import { readStartOptions, readyLines } from './start-options.mjs';

const { port, host } = readOptions();
installPackages();
if (!buildWeb()) {
  console.error('The app could not be built; the lines above say why.');
  process.exit(1);
}
const { serveWeb } = await import('./serve.mjs');
try {
  const served = await serveWeb({ folder: WEB_FOLDER, port, host });
  console.log(readyLines({ ...served, host }).join('\n'));
} catch (error) {
  console.error(reasonOf(error));
  process.exit(2);
}

function readOptions() {
  try {
    return readStartOptions(process.argv.slice(2));
  } catch (error) {
    console.error(error.message);
    process.exit(2);
  }
}

function reasonOf({ code, message }) {
  if (code === 'EADDRINUSE') {
    return `port: ${port ?? '4173 and those after it'} is taken by another program. Give another one with --port.`;
  }
  if (code === 'EADDRNOTAVAIL') return `host: this machine does not have the address ${host}.`;
  return `The app could not be served: ${message}`;
}
