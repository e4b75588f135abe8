import { describe, expect, it } from 'vitest';
import { dragIncision, drawn, example, expectNear, focus, hosts, onDisk, open, plan } from './support.js';

hosts();

/** What a page has besides its elements, before and after. */
const state = () => ({ focused: document.activeElement?.localName, scrolled: [scrollX, scrollY], hash: location.hash, title: document.title, history: history.length });

describe.each([
  ['with the module file', () => example('plain')],
  ['from the disk, with the classic script', () => onDisk('stories/hosts/file/index.html')],
])('a plain page, %s', (_, address) => {
  it('is dragged and worked by keys, without a word or a request', async () => {
    const { page, said, asked } = await open(address());
    await dragIncision(page, 140);
    expectNear((await plan(page)).incisionSite, 140);
    const before = (await plan(page)).incisionSite!;
    await focus(page, 'input.incision');
    await page.keyboard.press('ArrowUp');
    expect((await plan(page)).incisionSite).toBe(before + 1);
    expect(said).toEqual([]);
    expect(asked.filter((url) => !/\/dist\/|^data:,/.test(url))).toEqual([]);
  });

  it('keeps its focus and its place while it loads and while settings change', async () => {
    const { page } = await open(address());
    await drawn(page);
    const before = await page.evaluate(state);
    expect(before.focused).toBe('body');
    await page.$eval('astig-case', async (held) => {
      for (const [name, value] of [['eye', 'left'], ['steep-k', '45'], ['incision-site', '20'], ['arc-count', '2'], ['lang', 'de']] as const) {
        held.setAttribute(name, value);
        await new Promise(requestAnimationFrame);
      }
    });
    expect(await page.evaluate(state)).toEqual(before);
  });
});

describe('the example itself', () => {
  it('says what remains after a change', async () => {
    const { page } = await open(example('plain'));
    await dragIncision(page, 140);
    expect(await page.$eval('output', ({ value }) => value)).toMatch(/^After astig-cornea incision-handle: about \d\.\d\d D @ \d+° remains/);
  });
});
