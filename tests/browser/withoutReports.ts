/**
 * Runs in the page before its own code, where no finding matters: the workers that read the night would keep the
 * processor busy after every edit. The page is told, as it would be by a browser that cannot start them. What reads a
 * link starts: it ends by itself.
 */
export function withoutReports(): void {
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  const construct = (native: typeof Worker, [url, options]: ConstructorParameters<typeof Worker>) =>
    String(url).includes('/link.worker') ? new native(url, options) : new NoWorker();
  Object.assign(window, { Worker: new Proxy(Worker, { construct }) });
}
