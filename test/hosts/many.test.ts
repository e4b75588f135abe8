import { describe, expect, it } from 'vitest';
import type { Frame, Page } from 'puppeteer-core';
import { dragIncision, drawn, example, expectNear, hosts, open, plan } from './support.js';

hosts();

const RIGHT = '#right astig-cornea';

async function frameOf(page: Page): Promise<{ frame: Frame; from: { x: number; y: number } }> {
  const iframe = (await page.$('iframe'))!;
  await iframe.scrollIntoView();
  const from = await iframe.evaluate((element) => {
    const { x, y } = element.getBoundingClientRect();
    return { x: x + element.clientLeft, y: y + element.clientTop };
  });
  return { frame: await iframe.contentFrame(), from };
}

describe('many cases on one page', () => {
  it('keeps them apart, and shows each where it is named', async () => {
    const { page, said } = await open(example('many'));
    await dragIncision(page, 140, { selector: RIGHT });
    expectNear((await plan(page, '#right')).incisionSite, 140);
    expect((await plan(page, '#left')).incisionSite).toBe(0);
    await drawn(page);
    const texts = await page.$$eval('aside > *', (all) => all.map(({ shadowRoot }) => shadowRoot!.textContent));
    expect(texts[0]).toContain('Before, right eye');
    expect(texts[0]).toMatch(/flattens 1[34]\d° by/);
    expect(texts[1]).toContain('Before, left eye');
    expect(texts[1]).toContain('flattens 180° by');
    expect(said).toEqual([]);
  });

  it('loads a second copy from another address without a word; the elements of the first stay', async () => {
    const { page, said, asked } = await open(example('many'), {
      before: () => {
        const { define } = customElements;
        const defined: string[] = ((globalThis as unknown as { defined: string[] }).defined = []);
        customElements.define = function (tag, ...rest) {
          defined.push(tag);
          return define.call(this, tag, ...rest);
        };
      },
    });
    await drawn(page);
    expect(asked.filter((url) => /elements(\.classic)?\.js$/.test(url))).toHaveLength(2);
    const defined = await page.evaluate(() => (globalThis as unknown as { defined: string[] }).defined);
    expect(new Set(defined).size).toBe(defined.length);
    const same = await page.evaluate(async () => {
      const first = customElements.get('astig-cornea');
      const script = Object.assign(document.createElement('script'), { type: 'module', src: '../../../dist/astigmatism-elements.js?later' });
      await new Promise((resolve) => {
        script.onload = resolve;
        document.head.append(script);
      });
      return first === customElements.get('astig-cornea');
    });
    expect(same).toBe(true);
    await dragIncision(page, 60, { selector: RIGHT });
    expectNear((await plan(page, '#right')).incisionSite, 60);
    expect(said).toEqual([]);
  });

  it('takes what was set before anything was defined', async () => {
    const { page, said } = await open(example('many'), {
      before: () => {
        new MutationObserver((_, observer) => {
          const held = document.querySelector('#left');
          if (!held) return;
          observer.disconnect();
          Object.assign(held, { plan: { eye: 'left', flatK: 41, steepK: 43, steepMeridian: 20 } });
          const early = document.createElement('astig-vectors');
          Object.assign(early, { for: 'left', readOnly: true });
          held.after(early);
        }).observe(document, { childList: true, subtree: true });
      },
    });
    await drawn(page, 'astig-vectors');
    expect(await plan(page, '#left')).toMatchObject({ flatK: 41, steepK: 43, steepMeridian: 20 });
    expect(await page.$eval('astig-vectors', (view) => [view.readOnly, Object.hasOwn(view, 'readOnly'), view.shadowRoot!.querySelector('svg')!.getAttribute('aria-label')!.includes('20°')])).toEqual([true, false, true]);
    expect(said).toEqual([]);
  });
});

describe('an element that moves', () => {
  it('into another document and back keeps its looks, its plan and its handles', async () => {
    const { page, said } = await open(example('many'));
    await drawn(page, RIGHT);
    const looks = async (place: Page | Frame): Promise<string[]> => {
      // The sliders come with the hands, after the drawing.
      await place.waitForFunction((wanted) => document.querySelector(wanted)?.shadowRoot?.querySelector('.visually-hidden'), {}, RIGHT);
      return place.$eval(RIGHT, ({ shadowRoot }) => [getComputedStyle(shadowRoot!.querySelector('[part~=limbus]')!).strokeWidth, getComputedStyle(shadowRoot!.querySelector('.visually-hidden')!).position, getComputedStyle(document.querySelector('#right')!).display]);
    };
    const before = await looks(page);
    expect(before).toEqual(['1.25px', 'absolute', 'contents']);
    await page.evaluate(() => {
      const inner = document.querySelector('iframe')!.contentDocument!;
      inner.body.append(inner.adoptNode(document.querySelector('#right')!));
    });
    const { frame, from } = await frameOf(page);
    await drawn(frame, RIGHT);
    expect(await looks(frame)).toEqual(before);
    await frame.$eval(RIGHT, (drawing) => drawing.scrollIntoView({ block: 'center', behavior: 'instant' }));
    await dragIncision(page, 140, { place: frame, selector: RIGHT, from });
    expectNear((await plan(frame, '#right')).incisionSite, 140);
    await page.evaluate(() => document.body.prepend(document.querySelector('iframe')!.contentDocument!.querySelector('#right')!));
    await drawn(page, RIGHT);
    expect(await looks(page)).toEqual(before);
    await dragIncision(page, 60, { selector: RIGHT });
    expectNear((await plan(page, '#right')).incisionSite, 60);
    expect(said).toEqual([]);
  });

  it('in the middle of a drag, into another document, lets go and puts the plan back', async () => {
    const { page, said } = await open(example('many'));
    await page.evaluate(() => {
      const heard: string[] = ((globalThis as unknown as { heard: string[] }).heard = []);
      document.addEventListener('astig-change', ({ type }) => heard.push(type));
    });
    await dragIncision(page, 140, { selector: RIGHT, release: false });
    expectNear((await plan(page, '#right')).incisionSite, 140);
    await page.evaluate(() => document.querySelector('iframe')!.contentDocument!.body.append(document.querySelector('#right')!));
    const { frame } = await frameOf(page);
    expect((await plan(frame, '#right')).incisionSite).toBe(180);
    await page.mouse.move(50, 50);
    await page.mouse.up();
    expect((await plan(frame, '#right')).incisionSite).toBe(180);
    expect(await page.evaluate(() => (globalThis as unknown as { heard: string[] }).heard)).toEqual([]);
    expect(said).toEqual([]);
  });

  it('out of a template is complete', async () => {
    const { page, said } = await open(example('many'));
    await page.evaluate(() => {
      const template = document.createElement('template');
      template.content.append(document.querySelector('#right')!);
      document.body.prepend(template.content);
    });
    await drawn(page, RIGHT);
    expect(await page.$eval(RIGHT, ({ shadowRoot }) => getComputedStyle(shadowRoot!.querySelector('[part~=limbus]')!).strokeWidth)).toBe('1.25px');
    expect(said).toEqual([]);
  });
});
