// Reads a USD file by tinyusdz and prints what it found. In a process of its own: that reader is built for a page, and
// asks where it runs by names that only a page's worker has.
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

Object.defineProperty(process, 'type', { value: 'renderer' });
globalThis.self = globalThis;
globalThis.WorkerGlobalScope = class {};
globalThis.location = { href: 'file:///' };

const require = createRequire(import.meta.url);
const wasm = require.resolve('tinyusdz').replace(/\.js$/, '.wasm');
const { default: start } = await import('tinyusdz/tinyusdz.js');
const { TinyUSDZLoaderNative } = await start({ wasmBinary: readFileSync(wasm) });
const loader = new TinyUSDZLoaderNative();
const [, , file] = process.argv;
const isRead = loader.loadFromBinary(new Uint8Array(readFileSync(file)), file);
process.stdout.write(JSON.stringify({ isRead, error: loader.error(), meshes: loader.numMeshes() }));
