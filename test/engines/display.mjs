/**
 * A screen that nobody sees, for a browser that knows no headless mode, and the settings of a desktop on it:
 * a browser for GTK takes the dark scheme and the wish for less motion from there.
 */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { endWithUs } from './processes.mjs';

const SCREEN = { width: 3200, height: 2400 };

/**
 * Where the corner of a window belongs. Without a window manager the keyboard goes to the window under the pointer, and
 * the pointer rests in the middle of the screen: here it is on the bar of the window, and never on the page.
 */
export const CORNER = { x: SCREEN.width / 2 - 20, y: SCREEN.height / 2 - 5 };

export class Display {
  /** @param {{ display: string, settings: string }} programs paths of Xvfb and xsettingsd */
  static async start({ display, settings }) {
    const server = endWithUs(spawn(display, ['-displayfd', '3', '-screen', '0', `${SCREEN.width}x${SCREEN.height}x24`, '-nolisten', 'tcp'], { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] }));
    const number = await new Promise((resolve, reject) => {
      server.stdio[3].once('data', (data) => resolve(String(data).trim()));
      server.once('error', reject);
      server.once('exit', (code) => reject(new Error(`Xvfb ended with ${code} before it had a display.`)));
    });
    return new Display(`:${number}`, server, settings);
  }

  constructor(name, server, settings) {
    this.name = name;
    this.server = server;
    this.folder = mkdtempSync(join(tmpdir(), 'astig-display-'));
    this.file = join(this.folder, 'settings');
    this.write({});
    const env = { ...process.env, DISPLAY: name };
    this.settings = endWithUs(spawn(settings, ['-c', this.file], { env, stdio: 'ignore' }));
  }

  /** @param {{ dark?: boolean, still?: boolean }} wanted takes effect within a few frames */
  set(wanted) {
    this.write(wanted);
    this.settings.kill('SIGHUP');
  }

  write({ dark = false, still = false }) {
    writeFileSync(this.file, `Net/ThemeName "Adwaita${dark ? '-dark' : ''}"\nGtk/EnableAnimations ${still ? 0 : 1}\n`);
  }

  stop() {
    this.settings.kill();
    this.server.kill();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
