// `npm start`: installs what is missing, builds what has changed, serves the page and says where.
import { buildIfChanged } from './build.mjs';
import { installPackages } from './install.mjs';
import { requireNode } from './node.mjs';
import { appFolder } from './places.mjs';
import { readPort, serveFolder } from './serve.mjs';

const usualPort = 4173;
const portsTried = 50;

/** @param {unknown} reason */
const isTaken = (reason) => reason instanceof Error && 'code' in reason && reason.code === 'EADDRINUSE';

/** The port asked for by PORT and no other; else the usual one or the next free. */
async function openServer() {
  const asked = process.env.PORT;
  if (asked !== undefined && asked !== '') {
    if (!/^\d{1,5}$/.test(asked) || Number(asked) > 65535)
      throw new Error(`PORT is "${asked}", which is no port number.`);
    return serveFolder(appFolder, Number(asked)).catch((reason) => {
      throw isTaken(reason) ? new Error(`Port ${asked} is taken. Free it, or give another in PORT.`) : reason;
    });
  }
  for (let port = usualPort; port < usualPort + portsTried; port += 1) {
    try {
      return await serveFolder(appFolder, port);
    } catch (reason) {
      if (!isTaken(reason)) throw reason;
    }
  }
  throw new Error(`No free port between ${usualPort} and ${usualPort + portsTried - 1}. Give one in PORT.`);
}

requireNode();
if (!(await installPackages()) || !(await buildIfChanged())) process.exit(1);
try {
  const server = await openServer();
  console.log(`\nStillmain is open at http://localhost:${readPort(server)}/   (Ctrl+C shuts it)`);
  console.log(
    'It trains; it does not qualify. The operator’s written procedure, local codes and licensed practice come first.',
  );
  const shut = () => {
    server.close(() => process.exit(0));
    server.closeAllConnections();
  };
  process.once('SIGINT', shut);
  process.once('SIGTERM', shut);
} catch (reason) {
  console.error(reason instanceof Error ? reason.message : String(reason));
  process.exit(1);
}
