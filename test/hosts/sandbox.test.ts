import { describe, expect, it } from 'vitest';
import { dragIncision, drawn, example, expectNear, focus, hosts, open, plan } from './support.js';

hosts();

describe.each(['classic', 'module'])('a sandboxed frame without an origin, with the %s file', (name) => {
  it('is drawn, dragged and worked by keys, and blurs without a worker', async () => {
    const { page, said, asked } = await open(example('sandbox'));
    const iframe = (await page.$(`iframe[name=${name}]`))!;
    const frame = await iframe.contentFrame();
    await drawn(frame);
    expect(await frame.evaluate(() => globalThis.origin)).toBe('null');
    await iframe.scrollIntoView();
    const box = await page.$eval(`iframe[name=${name}]`, (element) => {
      const { x, y } = element.getBoundingClientRect();
      return { x: x + element.clientLeft, y: y + element.clientTop };
    });
    await dragIncision(page, 140, { place: frame, from: box });
    expectNear((await plan(frame)).incisionSite, 140);
    const before = (await plan(frame)).incisionSite!;
    await focus(frame, 'input.incision');
    await page.keyboard.press('ArrowDown');
    expect((await plan(frame)).incisionSite).toBe(before - 1);
    await frame.$eval('astig-sight', (sight) => sight.scrollIntoView());
    await frame.waitForFunction(() => [...document.querySelector('astig-sight')!.shadowRoot!.querySelectorAll('canvas')].some(({ width }) => width > 100));
    expect(said).toEqual([]);
    expect(asked.filter((url) => !/\/(dist|sandbox)\/|^data:,/.test(url))).toEqual([]);
  });
});
