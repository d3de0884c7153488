/**
 * Runs in the page before its own code, where no finding matters: the workers that read the night would keep the
 * processor busy after every edit. The page is told, as it would be by a browser that cannot start them.
 */
export function withoutReports(): void {
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  Object.assign(window, { Worker: NoWorker });
}
