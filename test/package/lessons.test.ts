import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LESSONS } from '../components/lessons.js';

const folder = new URL('../../stories/lessons/', import.meta.url);
const files = readdirSync(folder).filter((name) => name.endsWith('.html'));
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8');

describe('the lessons', () => {
  it('are all walked through and calculated again by the tests in the browser', () => {
    expect(files.map((name) => name.replace('.html', '')).sort()).toEqual(Object.keys(LESSONS).sort());
  });

  it.each(files)('%s is short, its eyes are invented and say so, and it asks for nothing', (name) => {
    const text = read(name);
    expect(text.trimEnd().split('\n').length).toBeLessThan(40);
    expect(text).toMatch(/<astig-step>[^<]*invented/i);
    expect(text).not.toMatch(/<script|<link|https?:|src=|\son\w+=/);
  });

  it('are a story each', () => {
    const stories = readFileSync(new URL('../lessons.stories.ts', folder), 'utf8');
    expect([...stories.matchAll(/ = lesson\('([\w-]+)'\)/g)].map(([, name]) => `${name}.html`).sort()).toEqual([...files].sort());
  });

  it('have an address each', () => {
    const ids = files.map((name) => /<astig-steps id="([\w-]+)"/.exec(read(name))?.[1]);
    expect(ids).not.toContain(undefined);
    expect(new Set(ids).size).toBe(files.length);
  });
});
