import type { Plugin } from 'vite';

/**
 * What the built page may load and run: its own files, and what it made itself (pictures and models as blobs, pictures
 * as data). No other host, no script or style inside the page, no script out of a string.
 */
const DIRECTIVES: Readonly<Record<string, string>> = {
  'default-src': "'self'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' blob: data:",
  'font-src': "'self'",
  'connect-src': "'self' blob: data:",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'object-src': "'none'",
  'frame-src': "'none'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

const written = (directives: Readonly<Record<string, string>>): string =>
  Object.entries(directives)
    .map(([name, value]) => `${name} ${value}`)
    .join('; ');

/** The policy in the page's own head. It does not reach into workers, which a server's header does. */
export const PAGE_POLICY = written(DIRECTIVES);

/**
 * The same for a server that sends it as a header with every file: the decoder of models is WebAssembly and runs in a
 * worker, and nobody may show the page in a frame, which only a header can say.
 */
export const HEADER_POLICY = written({
  ...DIRECTIVES,
  'script-src': "'self' 'wasm-unsafe-eval'",
  'frame-ancestors': "'none'",
});

/** Puts the policy into the head of the built page, before anything that it is about. */
export function contentPolicy(): Plugin {
  return {
    name: 'content-policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: PAGE_POLICY },
        injectTo: 'head-prepend',
      },
    ],
  };
}
