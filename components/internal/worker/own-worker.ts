export type WorkerMaker = new (url: URL, options: WorkerOptions) => Worker;

/**
 * The browser's class of workers, for scripts of this library alone. A file that starts one has to name its script in the
 * words by which bundlers recognise a worker: `new Worker(new URL('./some-worker.js', import.meta.url), { type: 'module' })`.
 * The parameter is called `Worker` there, and the global one is not named in the same file, or tools would rename it.
 * @throws whatever the browser throws where a page may have no worker.
 */
export function ownWorker(): WorkerMaker {
  return class extends globalThis.Worker {
    constructor(url: URL, options: WorkerOptions) {
      // Refused by every browser, and by some not without a word on the console.
      if (url.origin !== globalThis.origin) throw new Error('A worker has to be of the origin of its page.');
      super(trusted(url), options);
    }
  };
}

interface Policy {
  createScriptURL(url: string): string;
}

interface TrustedTypes {
  createPolicy(name: string, rules: Policy): Policy;
}

let policy: Policy | undefined;

/**
 * What a page with Trusted Types takes for the address of a script; it goes where a string would. The policy
 * `astigmatism-elements` vouches for the scripts of this library and never leaves this file. A page may allow a name only
 * once, so all workers share it; it is made on the first use, so that who starts none need not name it.
 */
function trusted({ href }: URL): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  if (!trustedTypes) return href;
  policy ??= trustedTypes.createPolicy('astigmatism-elements', { createScriptURL: (url) => url });
  return policy.createScriptURL(href);
}
