import { afterEach, describe, expect, it, vi } from 'vitest';
// @ts-expect-error a script without types
import { ENGINES, findEngine } from '../engines/find.mjs';

const VARIABLES = { chromium: 'CHROME_PATH', firefox: 'FIREFOX_PATH', webkit: 'WEBKIT_DRIVER_PATH' } as const;

describe('finding the engines', () => {
  afterEach(() => vi.unstubAllEnvs());

  it.each(Object.entries(VARIABLES))('refuses another %s than the named one', (engine, variable) => {
    vi.stubEnv(variable, '/no/such/program');
    expect(() => findEngine(engine)).toThrow(`${variable} names /no/such/program, which is not a program.`);
  });

  it.runIf(process.platform === 'linux')('says what to install when a program is missing, and asks nobody', () => {
    vi.stubEnv('PATH', '');
    expect(() => findEngine('webkit')).toThrow('apt-get install webkit2gtk-driver xvfb xsettingsd');
  });

  it('takes a named program as the browser', () => {
    vi.stubEnv('FIREFOX_PATH', process.execPath);
    expect(findEngine('firefox')).toEqual({ browser: process.execPath });
    expect(ENGINES).toEqual(['chromium', 'firefox', 'webkit']);
  });
});
