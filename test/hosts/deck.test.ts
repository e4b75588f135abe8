import { describe, expect, it } from 'vitest';
import type { Page } from 'puppeteer-core';
import { bundledExample, centre, dragIncision, drawn, expectNear, focus, hosts, open, plan, towards } from './support.js';
import type { Opened } from './support.js';

hosts();

/** Number of the slide that is shown. */
const slide = (page: Page): Promise<number> => page.evaluate(() => [...document.querySelectorAll('.slides > section')].findIndex(({ classList }) => classList.contains('present')));
const black = (page: Page): Promise<boolean> => page.$eval('.reveal', ({ classList }) => classList.contains('paused'));

async function openSlide(number: number, options = {}): Promise<Opened> {
  const opened = await open(`${bundledExample('deck')}#/${number}`, options);
  await opened.page.waitForSelector('.reveal.ready');
  await drawn(opened.page);
  // The slide moves to its place.
  await opened.page.waitForFunction(() => document.getAnimations().every((moving) => !(moving instanceof CSSTransition)));
  return opened;
}

const ENTRY = '#typed astig-entry';

describe('a deck of slides', () => {
  it.each([
    ['smaller', 700, 520],
    ['as it is', 1050, 770],
    ['larger', 1500, 1000],
  ])('drags to where the pointer is, %s', async (_, width, height) => {
    const { page, said } = await openSlide(1, { width, height });
    for (const target of [140, 65]) {
      await dragIncision(page, target);
      expectNear((await plan(page)).incisionSite, target);
    }
    const [handle, pointer] = [await centre(page, '[part~=incision-handle] .knob'), await towards(page, 65)];
    expect(Math.hypot(handle.x - pointer.x, handle.y - pointer.y)).toBeLessThan(8);
    expect(said).toEqual([]);
  });

  it('stays on its slide while keys move a handle, and turns when the handle is left', async () => {
    const { page } = await openSlide(1);
    await focus(page, 'input.incision');
    for (const key of ['ArrowRight', 'ArrowLeft', 'ArrowUp', 'ArrowDown', 'PageDown', 'PageUp', 'End', 'Home'] as const) await page.keyboard.press(key);
    expect(await slide(page)).toBe(1);
    expect((await plan(page)).incisionSite).toBe(0);
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    await page.keyboard.press('ArrowRight');
    expect(await slide(page)).toBe(2);
  });

  it('stays while a number is typed, its point included, and while a choice is made by keys', async () => {
    const { page } = await openSlide(2);
    await drawn(page, ENTRY);
    await focus(page, 'input[name=steepK]', ENTRY);
    await page.$eval(ENTRY, ({ shadowRoot }) => (shadowRoot!.activeElement as HTMLInputElement).select());
    await page.keyboard.type('44.5');
    for (const key of ['ArrowLeft', 'Home', 'End', 'Backspace', '5', 'Enter'] as const) await page.keyboard.press(key);
    expect((await plan(page, '#typed')).steepK).toBe(44.5);
    await focus(page, 'input[name=eye]:checked', ENTRY);
    await page.keyboard.press('ArrowRight');
    expect((await plan(page, '#typed')).eye).toBe('left');
    expect([await slide(page), await black(page)]).toEqual([2, false]);
  });

  it('stays while a button is pressed and what it opened is closed, by keys', async () => {
    const { page } = await openSlide(1);
    await focus(page, 'button.sourced');
    await page.keyboard.press('Space');
    await page.waitForFunction(() => document.querySelector('astig-cornea')!.shadowRoot!.querySelector('.source:popover-open'));
    await page.keyboard.press('Escape');
    await page.waitForFunction(() => !document.querySelector('astig-cornea')!.shadowRoot!.querySelector('.source:popover-open'));
    expect(await page.$eval('.reveal', ({ classList }) => classList.contains('overview'))).toBe(false);
    expect(await slide(page)).toBe(1);
    // Nothing on a button but pressing it.
    await page.keyboard.press('ArrowRight');
    expect(await slide(page)).toBe(2);
  });

  it('stays while a finger drags, and is turned by a finger elsewhere', async () => {
    const { page } = await openSlide(1, { touch: true });
    const handle = await centre(page, '[part~=incision-handle] .knob');
    const swipe = async (from: { x: number; y: number }, to: { x: number; y: number }): Promise<void> => {
      const touch = await page.touchscreen.touchStart(from.x, from.y);
      for (let step = 1; step <= 6; step += 1) await touch.move(from.x + ((to.x - from.x) * step) / 6, from.y + ((to.y - from.y) * step) / 6);
      await touch.end();
    };
    // Far to the side and hardly up, as one swipes.
    await swipe(handle, await towards(page, 20));
    expectNear((await plan(page)).incisionSite, 20);
    expect(await slide(page)).toBe(1);
    await swipe({ x: 900, y: 860 }, { x: 700, y: 860 });
    expect(await slide(page)).toBe(2);
  });

  it('walks a lesson by its own fragments, there and back, with an answer that waits', async () => {
    const { page, said } = await openSlide(4);
    await drawn(page, '#taught astig-cornea');
    // The slide was read out when it came, without the answer.
    expect(await page.$eval('.aria-status', ({ textContent }) => textContent)).not.toContain('2.00 D remains');
    const site = async (): Promise<unknown> => (await plan(page, '#taught')).incisionSite;
    const asks = (): Promise<boolean> => page.$eval('#lesson', ({ shadowRoot }) => shadowRoot!.querySelector('.predict') !== null);
    const settle = async (key: 'ArrowRight' | 'ArrowLeft'): Promise<void> => {
      await page.keyboard.press(key);
      await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 1000)));
    };
    /** What is told of it: by the deck, which reads out what it uncovers, and by the steps, which say the answer. */
    const told = (): Promise<string[]> => page.$eval('#lesson', ({ shadowRoot }) => [document.querySelector('.aria-status')!, ...shadowRoot!.querySelectorAll('[role=status]')].map(({ textContent }) => textContent).map((text) => text.replaceAll(/\s+/g, ' ').trim()));
    const seen: unknown[] = [[await site(), await asks(), await slide(page)]];
    const heard: string[][] = [];
    for (const key of ['ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft'] as const) {
      await settle(key);
      seen.push([await site(), await asks(), await slide(page)]);
      heard.push(await told());
    }
    expect(seen).toEqual([
      [null, false, 4],
      [90, false, 4],
      [90, true, 4],
      [180, false, 4],
      [180, false, 5],
      [180, false, 4],
      [180, false, 4],
      [90, false, 4],
      [null, false, 4],
    ]);
    expect(heard.slice(0, 3)).toEqual([
      [expect.stringContaining('A cut at 90° that flattens by 0.50 D: 1.00 D remains.'), '', ''],
      ['', '', 'The same cut at 180°: what will remain?'],
      [expect.stringContaining('Off by 90°, the same cut adds: 2.00 D remains.'), 'You expected 1.00 D @ 90°; the estimate is 2.00 D @ 90°. The difference is 1.00 D.', ''],
    ]);
    await settle('ArrowRight');
    // A handle that has the focus keeps its arrows: neither the slide nor the step turns.
    await focus(page, 'input.incision', '#taught astig-cornea');
    await page.keyboard.press('ArrowRight');
    expect(await site()).not.toBe(90);
    expect(await asks()).toBe(false);
    expect(await slide(page)).toBe(4);
    expect(said).toEqual([]);
  });
});
