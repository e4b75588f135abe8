import { describe, expect, it } from 'vitest';
import { inventedResults } from '../../stories/results.js';
import { dragIncision, drawn, example, expectNear, focus, hosts, open, plan } from './support.js';

hosts();

/** What a page hands down to all that is inside, and what it must not hand down to drawings, which are calculated for plain letters. */
const HANDED_DOWN = ['display', 'line-height', 'text-align', 'text-indent', 'text-shadow', 'text-transform', 'text-wrap-mode', 'white-space-collapse'];
const TO_DRAWINGS = ['letter-spacing', 'word-spacing', 'fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'text-anchor', 'transform'];

/** How everything inside the elements looks, one line for each property of each. */
function looks(handedDown: string[], toDrawings: string[]): string[] {
  return [...document.querySelectorAll('astig-case > *')].flatMap((view) =>
    [...view.shadowRoot!.querySelectorAll('*')].flatMap((element, index) => {
      const style = getComputedStyle(element);
      const names = element.closest('svg') ? [...handedDown, ...toDrawings] : [...handedDown];
      // The others are as wide as the words beside them.
      if (element.matches('figure > svg')) names.push('width');
      return names.map((name) => `${view.localName} ${index} ${element.localName}.${element.getAttribute('class')} ${name}: ${style.getPropertyValue(name)}`);
    }),
  );
}

describe('a page with rude styles and scripts', () => {
  it('makes nothing inside the elements look otherwise than a plain page does', async () => {
    const { page, said } = await open(example('hostile'));
    for (const tag of ['cornea', 'vectors', 'summary', 'entry', 'options', 'sweep', 'sight', 'pencil', 'explain']) await drawn(page, `astig-${tag}`);
    await page.waitForFunction(() => document.querySelector('astig-options')!.shadowRoot!.querySelector('table tbody tr'));
    await page.$eval('astig-outcomes', (results, data) => Object.assign(results, { data }), inventedResults(100));
    await page.waitForFunction(() => document.querySelector('astig-outcomes')!.shadowRoot!.querySelector('.diagram ellipse'));
    await drawn(page, 'astig-outcomes');
    const rude = await page.evaluate(looks, HANDED_DOWN, TO_DRAWINGS);
    expect(rude.length).toBeGreaterThan(1000);
    const outside = await page.$eval('astig-cornea', (view) => getComputedStyle(view).textTransform);
    await page.evaluate(() => {
      document.styleSheets[0]!.disabled = true;
      // As wide as before.
      document.body.style.margin = '0';
    });
    await drawn(page);
    await drawn(page);
    const plain = new Set(await page.evaluate(looks, HANDED_DOWN, TO_DRAWINGS));
    expect(outside).toBe('uppercase');
    expect(rude.filter((line) => !plain.has(line))).toEqual([]);
    expect(said).toEqual([]);
  });

  it('works with it: mouse, keys, a choice, the blur and another language', async () => {
    const { page, said } = await open(example('hostile'));
    await drawn(page);
    await dragIncision(page, 140);
    expectNear((await plan(page)).incisionSite, 140);
    const before = (await plan(page)).incisionSite!;
    await focus(page, 'input.incision');
    await page.keyboard.press('ArrowUp');
    expect((await plan(page)).incisionSite).toBe(before + 1);
    await focus(page, 'input[name=eye]:checked', 'astig-entry');
    await page.keyboard.press('ArrowRight');
    expect((await plan(page)).eye).toBe('left');
    await page.waitForFunction(() => document.querySelector('astig-options')!.shadowRoot!.querySelector('table tbody tr'));
    await page.$eval('astig-sight', (sight) => sight.scrollIntoView());
    await page.waitForFunction(() => [...document.querySelector('astig-sight')!.shadowRoot!.querySelectorAll('canvas')].some(({ width }) => width > 100));
    await page.$eval('astig-summary', ({ shadowRoot }) => shadowRoot!.querySelector<HTMLElement>('.sourced')!.click());
    await page.waitForFunction(() => document.querySelector('astig-summary')!.shadowRoot!.querySelector('.source:popover-open h2'));
    await page.evaluate(() => (document.documentElement.lang = 'de'));
    await page.waitForFunction(() => document.querySelector('astig-cornea')!.shadowRoot!.textContent!.includes('Linkes Auge'));
    expect(said).toEqual([]);
  });
});
