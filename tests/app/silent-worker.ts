/** In place of a worker, which is not there under test: it takes what it is sent and never answers. */
export class SilentWorker {
  addEventListener(): void {}
  postMessage(): void {}
  terminate(): void {}
}
