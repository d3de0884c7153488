import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
};

/** A plain server of files, as anybody's is: the page lies in a folder of it, and it can be cut off. */
export class OwnServer {
  /** The folder of the page on the disk; another one is another version of it. */
  folder: string;
  readonly #under: string;
  readonly #headers: Readonly<Record<string, string>>;
  readonly #compresses: boolean;
  #server: Server | null = null;
  #port = 0;

  /** @param under the address of the page on the server, with a slash at both ends */
  constructor(
    folder: string,
    under: string,
    headers: Readonly<Record<string, string>> = {},
    compresses = false,
  ) {
    this.folder = folder;
    this.#under = under;
    this.#headers = headers;
    this.#compresses = compresses;
  }

  /** Begins to answer, at the same address every time, and gives it. */
  async start(): Promise<string> {
    const server = createServer(({ url = '' }, response) => {
      const path = decodeURIComponent(url.split(/[?#]/)[0] ?? '');
      const below = normalize(path.slice(this.#under.length) || 'index.html');
      try {
        if (!path.startsWith(this.#under) || below.startsWith('..')) throw new Error('outside');
        const body = readFileSync(join(this.folder, below));
        const type = TYPES[extname(below)] ?? 'application/octet-stream';
        const encoding = this.#compresses ? { 'content-encoding': 'gzip' } : {};
        response.writeHead(200, {
          'content-type': type,
          'cache-control': 'no-cache',
          ...encoding,
          ...this.#headers,
        });
        response.end(this.#compresses ? gzipSync(body) : body);
      } catch {
        response.writeHead(404).end();
      }
    });
    await new Promise<void>((listening) => server.listen(this.#port, '127.0.0.1', listening));
    const address = server.address();
    if (address === null || typeof address === 'string') throw new Error('the server told no port');
    this.#port = address.port;
    this.#server = server;
    return `http://127.0.0.1:${address.port}${this.#under}`;
  }

  /** Answers nobody any more. */
  async stop(): Promise<void> {
    const server = this.#server;
    this.#server = null;
    if (!server) return;
    const closed = new Promise((done) => server.close(done));
    server.closeAllConnections();
    await closed;
  }
}
