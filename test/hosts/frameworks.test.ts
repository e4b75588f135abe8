import { describe, expect, it } from 'vitest';
import { bundledExample, dragIncision, drawn, expectNear, focus, hosts, open, plan } from './support.js';

hosts();

describe.each(['react', 'vue', 'svelte'])('%s', (name) => {
  it('sets the plan as a property, hears changes and re-renders without undoing them', async () => {
    const { page, said } = await open(bundledExample(name));
    await drawn(page);
    expect(await plan(page)).toMatchObject({ flatK: 43, steepK: 44, steepMeridian: 180, age: 70, incisionSite: 180, incisionWidth: 2.75 });
    await (await page.$('button'))!.click();
    await drawn(page);
    expect((await plan(page)).incisionSite).toBe(90);
    expect(await page.$eval('output', ({ textContent }) => textContent)).toBe('nothing yet');
    // Seen from above, as the attribute says, 90° lies below.
    const target = 140;
    await dragIncision(page, target + 180);
    expectNear((await plan(page)).incisionSite, target);
    await page.waitForFunction(() => /^astig-cornea incision-handle: \d\.\d\d D$/.test(document.querySelector('output')!.textContent));
    expect(said).toEqual([]);
  });

  it('keeps the way back although the plan goes through its state', async () => {
    const { page } = await open(bundledExample(name));
    await drawn(page);
    await focus(page, 'input.incision');
    for (const expected of [181, 182]) {
      await page.keyboard.press('ArrowUp');
      expect((await plan(page)).incisionSite).toBe(expected);
    }
    await page.keyboard.down('Control');
    await page.keyboard.press('z');
    expect((await plan(page)).incisionSite).toBe(181);
    await page.keyboard.press('z');
    await page.keyboard.up('Control');
    expect((await plan(page)).incisionSite).toBe(180);
    await drawn(page);
    expect((await plan(page)).incisionSite).toBe(180);
  });

  it('takes views away and puts them back, and hands numbers over as they are typed', async () => {
    const { page, said } = await open(bundledExample(name));
    await drawn(page, 'astig-summary');
    const [, toggle] = await page.$$('button');
    await toggle!.click();
    await page.waitForFunction(() => !document.querySelector('astig-summary'));
    await toggle!.click();
    await drawn(page, 'astig-summary');
    const text = (): Promise<string> => page.$eval('astig-summary', ({ shadowRoot }) => shadowRoot!.textContent);
    const before = await text();
    await page.$eval('input', (input) => (input.select(), undefined));
    await page.keyboard.type('3');
    await page.waitForFunction(() => document.querySelector('astig-case')!.plan.incisionWidth === 3);
    await drawn(page, 'astig-summary');
    expect(before).toContain('Before, right eye');
    expect(await text()).not.toBe(before);
    expect(said).toEqual([]);
  });
});
