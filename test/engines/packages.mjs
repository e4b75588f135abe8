/** Asks the system's own package manager, without a question to the user. Never a download from elsewhere. */
import { spawnSync } from 'node:child_process';

/** Debian's, for the languages of the elements: Latin, Arabic, Chinese. */
const FONTS = ['fonts-liberation', 'fonts-noto-core', 'fonts-wqy-microhei'];

/**
 * Commands of the usual package managers, and what each calls an engine: a list of tries, each a list of packages.
 * A minimal system has no fonts, and text without a font has no width.
 */
const MANAGERS = [
  {
    tool: 'apt-get',
    root: true,
    before: [['update', '-q']],
    install: ['install', '-y', '-q', '--no-install-recommends'],
    packages: {
      chromium: [['chromium', ...FONTS], ['chromium-browser', ...FONTS]],
      firefox: [['firefox-esr', ...FONTS], ['firefox', ...FONTS]],
      webkit: [['webkit2gtk-driver', 'xvfb', 'xsettingsd', ...FONTS]],
    },
  },
  {
    tool: 'dnf',
    root: true,
    install: ['install', '-y'],
    packages: { chromium: [['chromium', 'liberation-fonts']], firefox: [['firefox', 'liberation-fonts']] },
  },
  {
    tool: 'apk',
    root: true,
    install: ['add', '--no-cache'],
    packages: { chromium: [['chromium', 'font-liberation']], firefox: [['firefox', 'font-liberation']] },
  },
  {
    tool: 'pacman',
    root: true,
    install: ['-Sy', '--noconfirm', '--needed'],
    packages: { chromium: [['chromium', 'ttf-liberation']], firefox: [['firefox', 'ttf-liberation']] },
  },
  {
    tool: 'zypper',
    root: true,
    install: ['--non-interactive', 'install'],
    packages: { chromium: [['chromium', 'liberation-fonts']], firefox: [['MozillaFirefox', 'liberation-fonts']] },
  },
  // Homebrew refuses to run as root.
  { tool: 'brew', root: false, install: ['install', '--cask'], packages: { chromium: [['google-chrome']], firefox: [['firefox']] } },
];

/** Managers whose lists of packages are fresh. */
const prepared = new Set();

/**
 * @param {'chromium' | 'firefox' | 'webkit'} engine
 * @returns {boolean} whether a package manager has installed it
 */
export function installEngine(engine) {
  if (process.platform === 'win32') return false;
  const isRoot = process.getuid?.() === 0;
  for (const { tool, root, before = [], install, packages } of MANAGERS) {
    if (!packages[engine] || !works(tool, ['--version'])) continue;
    if (root && !isRoot && !works('sudo', ['-n', 'true'])) continue;
    if (!root && isRoot) continue;
    const command = root && !isRoot ? ['sudo', '-n', tool] : [tool];
    console.error(`${engine} is not installed; asking ${tool} for it.`);
    if (!prepared.has(tool)) for (const args of before) run(command, args);
    prepared.add(tool);
    if (packages[engine].some((names) => run(command, [...install, ...names]))) return true;
  }
  return false;
}

function works(tool, args) {
  return spawnSync(tool, args, { stdio: 'ignore' }).status === 0;
}

/** What the package manager prints goes to the error stream, for the output is the answer alone. */
function run([tool, ...first], args) {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(tool, [...first, ...args], { stdio: ['ignore', 2, 2], env }).status === 0;
}
