import { expect } from '@open-wc/testing';
import { inventedResults } from '../../stories/results.js';
import { opened, text } from './outcomes-support.js';

describe('own results where a page may have no worker', () => {
  it('are read in the page, by slices', async () => {
    const { Worker } = globalThis;
    let asked = 0;
    globalThis.Worker = class {
      constructor() {
        asked += 1;
        throw new DOMException('no', 'SecurityError');
      }
    } as unknown as typeof Worker;
    try {
      let turns = 0;
      const timer = setInterval(() => (turns += 1), 5);
      const first = await opened(inventedResults(20_000));
      clearInterval(timer);
      expect(text(first.root, '[role=status]')).to.equal('Eyes counted: 20000 of 20000.');
      expect(first.view.desk!.here).to.equal(true);
      expect(turns).to.be.above(10);
      const second = await opened(inventedResults(30));
      expect(text(second.root, '[role=status]')).to.equal('Eyes counted: 30 of 30.');
      // Asked once only: each refusal would be reported to the host.
      expect(asked).to.equal(1);
    } finally {
      globalThis.Worker = Worker;
    }
  });
});
