/** Runs in the page before its own code: leaves out the workers that reckon, where only files matter, and keeps those that read and write them. */
export function withFewWorkers(): void {
  const { Worker } = window;
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  Object.assign(window, {
    Worker: function start(address: string | URL, how?: WorkerOptions) {
      return /(link|night|pack|model)\.worker/.test(String(address))
        ? new Worker(address, how)
        : new NoWorker();
    },
  });
}
