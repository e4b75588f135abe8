import { createServer } from 'node:http';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import puppeteer from 'puppeteer-core';
import type { Browser, Page } from 'puppeteer-core';
import { findBrowser } from '../find-browser.mjs';

/** What a path of the page's own server answers. */
export type Files = Record<string, string>;

export interface Opened {
  page: Page;
  /** Everything on the console, and errors that nobody caught. */
  said: string[];
  /** Addresses that were asked for, beginning with the page itself. */
  asked: string[];
}

const TYPES: Record<string, string> = { js: 'text/javascript', json: 'application/json', html: 'text/html; charset=utf-8' };

/** A browser and a server, both of this file's tests alone. */
export class Host {
  private constructor(
    private readonly browser: Browser,
    private readonly server: Server,
    private files: Files,
  ) {}

  static async start(): Promise<Host> {
    const files: Files = {};
    const browser = await puppeteer.launch({
      executablePath: findBrowser({ install: true }),
      args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run', '--disable-component-update', '--disable-sync'],
    });
    const server = createServer((request, response) => {
      const body = host.files[request.url!.replace(/\?.*$/, '')];
      response.writeHead(body === undefined ? 404 : 200, { 'content-type': TYPES[/\.(\w+)$/.exec(request.url!)?.[1] ?? 'html'] ?? 'text/plain' });
      response.end(body ?? '');
    });
    const host = new Host(browser, server, files);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    return host;
  }

  get origin(): string {
    return `http://127.0.0.1:${(this.server.address() as AddressInfo).port}`;
  }

  /** Opens a page of its own, in a window of `width` CSS px. `address` may be elsewhere, for instance on the disk. */
  async open({ files = {}, address = `${this.origin}/`, width = 1200 }: { files?: Files; address?: string; width?: number }): Promise<Opened> {
    this.files = files;
    const page = await this.browser.newPage();
    const said: string[] = [];
    const asked: string[] = [];
    page.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', (error) => said.push(String(error)));
    page.on('request', (request) => asked.push(request.url()));
    await page.setViewport({ width, height: 1400 });
    await page.goto(address, { waitUntil: 'load' });
    return { page, said, asked };
  }

  async stop(): Promise<void> {
    await this.browser.close();
    this.server.close();
  }
}

/** A whole document. The icon keeps browsers from asking for one. */
export function htmlPage(body: string, { head = '', lang = 'en' } = {}): string {
  return `<!doctype html><html lang="${lang}"><head><meta charset="utf-8"><title>Page</title><link rel="icon" href="data:,">${head}</head><body>${body}</body></html>`;
}
