type WorkerMaker = new (url: URL, options: WorkerOptions) => Worker;

/**
 * The worker of the blur.
 * @throws whatever the browser throws where a page may have no worker.
 */
export function startWorker(): Worker {
  return construct(
    class extends globalThis.Worker {
      constructor(url: URL, options: WorkerOptions) {
        // Refused by every browser, and by some not without a word on the console.
        if (url.origin !== globalThis.origin) throw new Error('A worker has to be of the origin of its page.');
        super(trusted(url), options);
      }
    },
  );
}

/**
 * In the words by which bundlers recognise a worker, although the class is another. The global one is not called by its
 * mere name in this file, or tools would give the parameter a new one.
 */
function construct(Worker: WorkerMaker): Worker {
  return new Worker(new URL('./blur-worker.js', import.meta.url), { type: 'module' });
}

/** What a page with Trusted Types takes for the address of a script. It goes where a string would; the types know only that. */
let address: string | undefined;

interface TrustedTypes {
  createPolicy(name: string, rules: { createScriptURL(url: string): string }): { createScriptURL(url: string): string };
}

/**
 * With Trusted Types the policy `astigmatism-elements`, which vouches for this one address and never leaves this file.
 * It is made on the first use, so that a page that names its policies and blurs nothing need not name this one.
 */
function trusted({ href }: URL): string {
  const { trustedTypes } = globalThis as { trustedTypes?: TrustedTypes };
  address ??= trustedTypes ? trustedTypes.createPolicy('astigmatism-elements', { createScriptURL: () => href }).createScriptURL(href) : href;
  return address;
}
