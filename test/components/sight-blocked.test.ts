import { expect, html } from '@open-wc/testing';
import { MAPLE, Sight, difference } from './sight-support.js';

// What a page may forbid lasts for the page, so these tests have one of their own and run in this order.

const { Worker } = globalThis;
const { getContext } = HTMLCanvasElement.prototype;

describe('astig-sight where the page forbids things', () => {
  afterEach(() => {
    globalThis.Worker = Worker;
    HTMLCanvasElement.prototype.getContext = getContext;
  });

  it('calculates without a worker', async () => {
    globalThis.Worker = class {
      constructor() {
        throw new DOMException('blocked', 'SecurityError');
      }
    } as unknown as typeof Worker;
    const sight = await Sight.open();
    expect(sight.root.querySelectorAll('[part=problem]')).to.have.length(0);
    const strong = sight.pixels('before');
    await sight.plan({ ...MAPLE, steepK: 42.5 });
    expect(difference(strong, sight.pixels('before'))).to.be.at.least(50);
  });

  it('shows the scene once, sharp, and says so, where there is no canvas to draw on', async () => {
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, ...args: Parameters<typeof getContext>) {
      return (args[1] as { willReadFrequently?: boolean } | undefined)?.willReadFrequently ? null : getContext.apply(this, args);
    } as typeof getContext;
    const sight = await Sight.open(html`<astig-sight scene="street"></astig-sight>`);
    expect(sight.text('[part=problem]')).to.equal('The blur cannot be calculated here. This is the scene without any blur.');
    expect(sight.root.querySelectorAll('canvas')).to.have.length(0);
    expect(sight.find('.sharp svg').getAttribute('aria-label')).to.contain('A street at dusk');
    expect(sight.find('.sharp svg').getBoundingClientRect().width).to.be.at.least(300);
    await expect(sight.eye).to.be.accessible();
  });
});
