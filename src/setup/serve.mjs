// A static server for one folder on this machine only. The page needs nothing more: its routes live behind the #.
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

/** @type {Record<string, string>} */
const mediaTypes = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.jpg': 'image/jpeg',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.wasm': 'application/wasm',
  '.ogg': 'audio/ogg',
  '.wav': 'audio/wav',
  '.mp3': 'audio/mpeg',
  '.txt': 'text/plain; charset=utf-8',
};

/**
 * @param {string} folder
 * @param {string} url the request's path and query
 * @returns {string | undefined} the file meant, or nothing when it would lie outside the folder or is not there
 */
function resolveFile(folder, url) {
  let path;
  try {
    path = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? '/');
  } catch {
    return undefined;
  }
  const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  if (path.includes('\0') || !file.startsWith(normalize(folder) + sep)) return undefined;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

/**
 * @param {string} folder
 * @param {number} port 0 takes any free one
 * @returns {Promise<import('node:http').Server>} rejects with the socket's error, EADDRINUSE when the port is taken
 */
export function serveFolder(folder, port) {
  const server = createServer((request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') {
      response.writeHead(405, { allow: 'GET, HEAD' }).end();
      return;
    }
    const file = resolveFile(folder, request.url ?? '/');
    if (file === undefined) {
      response
        .writeHead(404, { 'content-type': 'text/plain; charset=utf-8' })
        .end('There is no such file here.\n');
      return;
    }
    response.writeHead(200, {
      'content-type': mediaTypes[extname(file)] ?? 'application/octet-stream',
      'content-length': statSync(file).size,
      'cache-control': 'no-cache',
      'x-content-type-options': 'nosniff',
    });
    if (request.method === 'HEAD') response.end();
    else createReadStream(file).pipe(response);
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(server));
  });
}

/** @param {import('node:http').Server} server a listening one */
export function readPort(server) {
  const address = server.address();
  if (address === null || typeof address === 'string')
    throw new Error('The server is not listening on a port.');
  return address.port;
}
