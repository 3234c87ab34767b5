// A static server on a loopback address, so that the pages are also read over http. It keeps a list of what was asked.
import { createServer } from 'node:http';
import { readFile, stat } from 'node:fs/promises';
import { extname, join, normalize, sep } from 'node:path';

const KINDS = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.png': 'image/png',
};

/** Serves `folder`; returns the address to prefix to a page's name, what was asked so far, and how to stop. */
export async function serve(folder) {
  const asked = [];
  const root = normalize(folder);
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url, 'http://localhost').pathname);
    let file = normalize(join(root, path));
    let status = 404;
    let body = Buffer.from('not here');
    if (file === root || file.startsWith(root + sep)) {
      try {
        if ((await stat(file)).isDirectory()) file = join(file, 'index.html');
        body = await readFile(file);
        status = 200;
      } catch {
        status = 404;
      }
    }
    asked.push({ path, status, bytes: body.length });
    const kind = status === 200 ? KINDS[extname(file)] ?? 'application/octet-stream' : 'text/plain';
    response.writeHead(status, { 'content-type': kind, 'cache-control': 'no-store' });
    response.end(body);
  });
  await new Promise((resolve, reject) => server.once('error', reject).listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${server.address().port}/`,
    asked,
    stop: () => new Promise((resolve) => { server.close(resolve); server.closeAllConnections(); }),
  };
}
