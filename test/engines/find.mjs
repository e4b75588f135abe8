/**
 * Finds the programs of the three engines. Order for each: a variable of the environment, what is installed, what
 * the system's own package manager can install without asking.
 */
import { accessSync, constants, readdirSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { installEngine } from './packages.mjs';

/** @typedef {'chromium' | 'firefox' | 'webkit'} EngineName */

/** In the order in which they are tested. @type {EngineName[]} */
export const ENGINES = ['chromium', 'firefox', 'webkit'];

const CHROMIUM = {
  variables: ['CHROME_PATH', 'BROWSER_PATH'],
  path: [
    'google-chrome-stable',
    'google-chrome',
    'chromium',
    'chromium-browser',
    'microsoft-edge-stable',
    'microsoft-edge',
    'chrome',
    'msedge',
  ],
  linux: [
    '/opt/google/chrome/chrome',
    '/opt/microsoft/msedge/msedge',
    '/usr/lib/chromium/chromium',
    '/snap/bin/chromium',
    '/var/lib/flatpak/exports/bin/org.chromium.Chromium',
  ],
  mac: [
    'Google Chrome.app/Contents/MacOS/Google Chrome',
    'Chromium.app/Contents/MacOS/Chromium',
    'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
  ],
  windows: [
    'Google\\Chrome\\Application\\chrome.exe',
    'Chromium\\Application\\chrome.exe',
    'Microsoft\\Edge\\Application\\msedge.exe',
  ],
};

const FIREFOX = {
  variables: ['FIREFOX_PATH'],
  path: ['firefox-esr', 'firefox'],
  linux: ['/usr/lib/firefox-esr/firefox-esr', '/usr/lib/firefox/firefox'],
  mac: ['Firefox.app/Contents/MacOS/firefox'],
  windows: ['Mozilla Firefox\\firefox.exe'],
};

/** What each engine is made of: the programs, all of which must be there. */
const PROGRAMS = {
  chromium: { browser: CHROMIUM },
  firefox: { browser: FIREFOX },
  webkit: {
    driver: { variables: ['WEBKIT_DRIVER_PATH'], path: ['WebKitWebDriver'] },
    browser: { variables: ['WEBKIT_BROWSER_PATH'], path: [], linux: miniBrowsers },
    display: { variables: [], path: ['Xvfb'] },
    settings: { variables: [], path: ['xsettingsd'] },
  },
};

const HELP = {
  chromium:
    'No browser of the Chromium family was found. Install Google Chrome, Chromium or Microsoft Edge ' +
    '(Debian: apt-get install chromium), or set CHROME_PATH to the program.',
  firefox: 'Firefox was not found. Install it (Debian: apt-get install firefox-esr), or set FIREFOX_PATH to the program.',
  webkit:
    'WebKit for GTK was not found: its driver, its MiniBrowser, Xvfb and xsettingsd are needed, on Linux ' +
    '(Debian: apt-get install webkit2gtk-driver xvfb xsettingsd).',
};

/**
 * @param {EngineName} engine
 * @param {{ install?: boolean }} [options] `install: true` lets the package manager be asked.
 * @returns {Record<string, string>} path of each program; `browser` is among them
 * @throws Error that says what to do, when one is missing
 */
export function findEngine(engine, { install = false } = {}) {
  const found = programsOf(engine) ?? (install && installEngine(engine) ? programsOf(engine) : undefined);
  if (!found) throw new Error(HELP[engine]);
  return found;
}

function programsOf(engine) {
  const found = Object.entries(PROGRAMS[engine]).map(([role, wanted]) => [role, named(wanted) ?? places(wanted).find(runnable)]);
  return found.every(([, path]) => path) ? Object.fromEntries(found) : undefined;
}

/** @throws Error when the user names what is no program: to take another instead would test the wrong one */
function named({ variables }) {
  const variable = variables.find((name) => process.env[name]);
  if (!variable) return undefined;
  const path = process.env[variable];
  if (runnable(path)) return path;
  throw new Error(`${variable} names ${path}, which is not a program.`);
}

function places({ path, linux = [], mac = [], windows = [] }) {
  if (process.platform === 'darwin') {
    const homes = ['/Applications', join(process.env.HOME ?? '', 'Applications')];
    return [...mac.flatMap((app) => homes.map((at) => join(at, app))), ...onPath(path)];
  }
  if (process.platform === 'win32') {
    const roots = [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].filter(Boolean);
    return [...windows.flatMap((app) => roots.map((root) => join(root, app))), ...onPath(path, '.exe')];
  }
  return [...onPath(path), ...(typeof linux === 'function' ? linux() : linux)];
}

function onPath(names, suffix = '') {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  return names.flatMap((name) => folders.map((folder) => join(folder, name + suffix)));
}

/** MiniBrowser stands beside the library, in a folder named after the processor and the version of its interface. */
function miniBrowsers() {
  const libraries = ['/usr/lib', '/usr/lib64', '/usr/libexec', '/usr/local/lib', '/usr/local/libexec'];
  const folders = libraries.flatMap((at) => [at, ...list(at).filter((name) => name.includes('-linux-')).map((name) => join(at, name))]);
  return ['webkit2gtk-4.1', 'webkit2gtk-4.0'].flatMap((version) => folders.map((at) => join(at, version, 'MiniBrowser')));
}

function list(folder) {
  try {
    return readdirSync(folder);
  } catch {
    return [];
  }
}

function runnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
