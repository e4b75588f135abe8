/**
 * Finds a browser of the Chromium family for the tests. Order: CHROME_PATH or BROWSER_PATH, a browser that is
 * installed, one that the system's own package manager can install without asking. Never a download from elsewhere.
 */
import { spawnSync } from 'node:child_process';
import { accessSync, constants, realpathSync, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const NAMES = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
  'chrome',
  'msedge',
];

const LINUX = [
  '/opt/google/chrome/chrome',
  '/opt/microsoft/msedge/msedge',
  '/usr/lib/chromium/chromium',
  '/snap/bin/chromium',
  '/var/lib/flatpak/exports/bin/org.chromium.Chromium',
];

const MAC = [
  'Google Chrome.app/Contents/MacOS/Google Chrome',
  'Chromium.app/Contents/MacOS/Chromium',
  'Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
];

const WINDOWS = [
  'Google\\Chrome\\Application\\chrome.exe',
  'Chromium\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
];

/** Commands of the usual package managers. A minimal system has no fonts, and text without a font has no width. */
const MANAGERS = [
  {
    tool: 'apt-get',
    root: true,
    before: [['update', '-q']],
    tries: ['chromium', 'chromium-browser'].map((name) => ['install', '-y', '-q', '--no-install-recommends', name, 'fonts-liberation']),
  },
  { tool: 'dnf', root: true, before: [], tries: [['install', '-y', 'chromium', 'liberation-fonts']] },
  { tool: 'apk', root: true, before: [], tries: [['add', '--no-cache', 'chromium', 'font-liberation']] },
  { tool: 'pacman', root: true, before: [], tries: [['-Sy', '--noconfirm', '--needed', 'chromium', 'ttf-liberation']] },
  { tool: 'zypper', root: true, before: [], tries: [['--non-interactive', 'install', 'chromium', 'liberation-fonts']] },
  // Homebrew refuses to run as root.
  { tool: 'brew', root: false, before: [], tries: [['install', '--cask', 'google-chrome']] },
];

/**
 * @param {{ install?: boolean }} [options] `install: true` lets the package manager be asked.
 * @returns {string} path of the executable
 * @throws Error that says what to do, when there is none
 */
export function findBrowser({ install = false } = {}) {
  const named = process.env.CHROME_PATH || process.env.BROWSER_PATH;
  if (named) {
    if (runnable(named)) return named;
    throw new Error(`CHROME_PATH or BROWSER_PATH names ${named}, which is not a program.`);
  }
  const found = installed() ?? (install && installWithManager() ? installed() : undefined);
  if (found) return found;
  throw new Error(
    'No browser of the Chromium family was found. Install Google Chrome, Chromium or Microsoft Edge ' +
      '(Debian: apt-get install chromium), or set CHROME_PATH to the program.',
  );
}

function installed() {
  return places().find(runnable);
}

function places() {
  if (process.platform === 'darwin') {
    return [...MAC.flatMap((app) => ['/Applications', join(process.env.HOME ?? '', 'Applications')].map((at) => join(at, app))), ...onPath()];
  }
  if (process.platform === 'win32') {
    const roots = [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA].filter(Boolean);
    return [...WINDOWS.flatMap((app) => roots.map((root) => join(root, app))), ...onPath('.exe')];
  }
  return [...onPath(), ...LINUX];
}

function onPath(suffix = '') {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  return NAMES.flatMap((name) => folders.map((folder) => join(folder, name + suffix)));
}

function runnable(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

function installWithManager() {
  if (process.platform === 'win32') return false;
  const isRoot = process.getuid?.() === 0;
  for (const { tool, root, before, tries } of MANAGERS) {
    if (!works(tool, ['--version'])) continue;
    if (root && !isRoot && !works('sudo', ['-n', 'true'])) continue;
    if (!root && isRoot) continue;
    const command = root && !isRoot ? ['sudo', '-n', tool] : [tool];
    console.error(`No browser found; asking ${tool} for one.`);
    for (const args of before) run(command, args);
    if (tries.some((args) => run(command, args))) return true;
  }
  return false;
}

function works(tool, args) {
  return spawnSync(tool, args, { stdio: 'ignore' }).status === 0;
}

/** What the package manager prints goes to the error stream, for the output is the path alone. */
function run([tool, ...first], args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(tool, [...first, ...args], { stdio: ['ignore', 2, 2], env }).status === 0;
}

if (process.argv[1] && realpathSync(process.argv[1]) === fileURLToPath(import.meta.url)) {
  try {
    console.log(findBrowser({ install: process.argv.includes('--install') }));
  } catch (error) {
    console.error(error.message);
    process.exitCode = 1;
  }
}
