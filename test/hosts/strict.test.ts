import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inventedResults } from '../../stories/results.js';
import { dragIncision, drawn, example, expectNear, hosts, open, plan } from './support.js';

hosts();

const elements = readdirSync('components', { withFileTypes: true }).filter((entry) => entry.isDirectory() && entry.name !== 'internal');

describe('a strict content security policy with Trusted Types', () => {
  it('holds for every element, its worker and another language', async () => {
    const { page, said, asked } = await open(example('strict'));
    const violations = (): Promise<string[]> => page.evaluate(() => (globalThis as unknown as { violations: string[] }).violations);
    const tags = elements.map(({ name }) => `astig-${name}`);
    expect(await page.evaluate((all) => all.filter((tag) => !document.querySelector(tag)), tags)).toEqual([]);
    await dragIncision(page, 140);
    expectNear((await plan(page)).incisionSite, 140);
    await page.$eval('astig-sight', (sight) => sight.scrollIntoView());
    await page.waitForFunction(() => [...document.querySelector('astig-sight')!.shadowRoot!.querySelectorAll('canvas')].some(({ width }) => width > 100));
    expect(page.workers()).toHaveLength(1);
    await page.$eval('astig-outcomes', (results, data) => Object.assign(results, { data }), inventedResults(100));
    await page.waitForFunction(() => document.querySelector('astig-outcomes')!.shadowRoot!.querySelectorAll('ellipse').length === 6);
    expect(page.workers()).toHaveLength(2);
    await (await page.$('button'))!.click();
    await page.waitForFunction(() => document.querySelector('astig-cornea')!.shadowRoot!.textContent!.includes('Rechtes Auge'));
    await drawn(page);
    expect(await violations()).toEqual([]);
    expect(said).toEqual([]);
    expect(asked.filter((url) => !/\/(dist|strict)\//.test(url))).toEqual([]);
  });

  it('would be told of a violation', async () => {
    const { page } = await open(example('strict'));
    await page.evaluate(() => document.body.setAttribute('style', 'color: red'));
    await page.waitForFunction(() => document.querySelector('output')!.value === '1 violations');
  });
});
