import { existsSync, statSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import puppeteer from 'puppeteer-core';
import type { TestProject } from 'vitest/node';
import { findBrowser } from '../find-browser.mjs';
import buildOnce, { newest } from '../package/build-once.js';
import { root } from '../package/built.js';
import { OUT, buildHosts } from './bundled.mjs';
import { serve } from './serve.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    browser: string;
    origin: string;
  }
}

/** Builds the library and the hosts, each only when it is older than what it is made of; one browser and one server for all tests. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  buildOnce();
  const made = join(OUT, 'deck/index.html');
  const sources = ['stories/hosts', 'dist/web-types.json', 'test/hosts/bundled.mjs', 'package-lock.json'];
  if (!existsSync(made) || sources.some((name) => newest(join(root, name)) > statSync(made).mtimeMs)) await buildHosts();
  const server = await serve();
  const browser = await puppeteer.launch({
    executablePath: findBrowser({ install: true }),
    args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run', '--disable-component-update', '--disable-sync'],
  });
  project.provide('browser', browser.wsEndpoint());
  project.provide('origin', `http://127.0.0.1:${(server.address() as AddressInfo).port}`);
  return async () => {
    await browser.close();
    server.close();
  };
}
