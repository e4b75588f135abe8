import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { bundleOneFile } from '../one-file.mjs';
import { root } from '../package/built.js';
import { dragIncision, drawn, example, expectNear, hosts, open, plan } from './support.js';
import type { Opened } from './support.js';

hosts();

/** A version that knows two elements only, and calls the right eye otherwise. */
const EARLIER = 'The right eye as it was called before';

const SOURCE = "import './components/case/define.ts'; import './components/cornea/define.ts';";
let earlier: { path: string; text: string }[];
beforeAll(async () => {
  const files = await bundleOneFile(root, { name: 'earlier', source: SOURCE });
  earlier = files.map(({ path, contents }) => ({ path, text: Buffer.from(contents).toString().replaceAll('Right eye', EARLIER) }));
});

const CONTEXT = 'astigmatism-elements/case';

/** The plain page with two versions: of the elements that both know it gets the earlier ones. */
function withTwo(change = (text: string): string => text): Promise<Opened> {
  const script = (url: string): string | undefined => {
    const { pathname } = new URL(url);
    if (pathname === '/dist/astigmatism-elements.js') return "import '../first/earlier.js'; await import('../later/astigmatism-elements.js');";
    // Each in a folder of its own, for the chunks of a version ask for its main file beside them.
    if (pathname.startsWith('/later/')) return readFileSync(join(root, 'dist', pathname.slice('/later/'.length)), 'utf8');
    const file = earlier.find(({ path }) => pathname === `/first/${path}`);
    return file && change(file.text);
  };
  return open(example('plain'), { script });
}

describe('two versions on one page', () => {
  it('are two: an element of the earlier is not that of the later', async () => {
    expect(earlier[0]!.text).toContain(EARLIER);
    expect(earlier[0]!.text).toContain(CONTEXT);
    const { page, said } = await withTwo();
    await drawn(page, 'astig-vectors');
    expect(await page.$eval('astig-cornea', ({ shadowRoot }) => shadowRoot!.querySelector('.title')!.textContent)).toBe(EARLIER);
    expect(await page.$eval('astig-summary', ({ shadowRoot }) => shadowRoot!.textContent)).toMatch(/Before, right eye/);
    expect(said).toEqual([]);
  });

  it('work on one case, where the views of the one ask the case of the other in the same way', async () => {
    const { page, said } = await withTwo();
    await drawn(page, 'astig-vectors');
    await dragIncision(page, 140);
    expectNear((await plan(page)).incisionSite, 140);
    await drawn(page, 'astig-vectors');
    const site = Math.round((await plan(page)).incisionSite!);
    expect(await page.$eval('astig-summary', ({ shadowRoot }) => shadowRoot!.textContent)).toContain(`flattens ${site}° by`);
    await page.$eval('astig-entry', ({ shadowRoot }) => shadowRoot!.querySelector<HTMLInputElement>('input[name=eye]:not(:checked)')!.click());
    expect((await plan(page)).eye).toBe('left');
    expect(said).toEqual([]);
  });

  it('keep out of each other’s way, where they do not: a view without a case says so', async () => {
    const { page, said } = await withTwo((text) => text.replaceAll(CONTEXT, `${CONTEXT}/0`));
    await drawn(page);
    await dragIncision(page, 140);
    expectNear((await plan(page)).incisionSite, 140);
    expect(await page.$eval('astig-vectors', ({ shadowRoot }) => shadowRoot!.textContent)).toMatch(/case/i);
    expect(await page.$$eval('astig-vectors, astig-summary, astig-entry', (views) => views.filter(({ shadowRoot }) => shadowRoot!.querySelector('svg')).length)).toBe(0);
    expect(said).toEqual([]);
  });
});
