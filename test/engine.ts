/** What differs from engine to engine in how a test reaches the page. The elements themselves never ask which one it is. */
import { executeServerCommand } from '@web/test-runner-commands';

export type Engine = 'chromium' | 'firefox' | 'webkit';

/** The engine in which this page runs. */
export const engine: Engine = await executeServerCommand('engine');

type Need = 'touch' | 'secondary button' | 'forced colours' | 'print' | 'tree';

const TREE = 'the tree of accessibility can be read by the DevTools protocol only';

/** What cannot be had in an engine, and why. */
const LACKING: Record<Engine, { [need in Need]?: string }> = {
  chromium: {},
  firefox: { tree: TREE },
  webkit: {
    tree: TREE,
    print: 'WebKitWebDriver for GTK neither prints nor shows a page as it is printed',
    'secondary button': 'WebKitWebDriver for GTK lets go of the primary button whichever it is told, and the secondary stays down',
    touch: 'WebKitWebDriver for GTK has no touch: a pointer of type touch arrives as a mouse',
    'forced colours': 'WebKit has no forced colours: neither `forced-colors: active` nor `forced-color-adjust`',
  },
};

/** `it` where the engine can do what the test needs; elsewhere skipped, with the reason in its title. */
export function itWith(need: Need, title: string, run: Mocha.AsyncFunc): Mocha.Test {
  const reason = LACKING[engine][need];
  return reason ? it.skip(`${title} [${reason}]`, run) : it(title, run);
}

/** One step of a finger. Coordinates are CSS px of the viewport, as clientX and clientY. */
export async function touch(type: 'start' | 'move' | 'end' | 'cancel', point?: readonly [x: number, y: number]): Promise<void> {
  await executeServerCommand('touch', { type, point });
}

/** Ways in which a page can be shown, the usual one first. */
const WAYS = {
  'prefers-color-scheme': ['light', 'dark'],
  'prefers-reduced-motion': ['no-preference', 'reduce'],
  'forced-colors': ['none', 'active'],
} as const;

type Shown = { [feature in keyof typeof WAYS]?: (typeof WAYS)[feature][number] } & { media?: 'print' };

/** Shows the page in this way, else as usual, until the test file ends; returns when style sheets see it. */
export async function emulate(shown: Shown): Promise<void> {
  const usual = Object.fromEntries(Object.entries(WAYS).map(([feature, [first]]) => [feature, first]));
  await executeServerCommand('emulate', { ...usual, ...shown });
  const asked = Object.entries(shown).map(([name, value]) => (name === 'media' ? value : `(${name}: ${value})`));
  // An engine that does not know a feature matches neither of its values, so what was not asked for is seen by its absence.
  const others = Object.entries(WAYS).flatMap(([name, [, other]]) => (shown[name as keyof typeof WAYS] === other ? [] : [`(${name}: ${other})`]));
  if (!shown.media) others.push('print');
  const wrong = (): string[] => [...asked.filter((query) => !matchMedia(query).matches), ...others.filter((query) => matchMedia(query).matches)];
  for (let frame = 0; frame < 300 && wrong().length > 0; frame += 1) await new Promise(requestAnimationFrame);
  if (wrong().length > 0) throw new Error(`${engine} does not obey for ${wrong().join(' and ')}.`);
}

/** What is seen of the page, as PNG in base64. */
export const screenshot = (): Promise<string> => executeServerCommand('screenshot');

/** How many sheets the page takes on paper; sizes in inches. */
export async function sheets(paper: { width: number; height: number; margin: number }): Promise<number> {
  return (await executeServerCommand<{ sheets: number }, object>('print', paper)).sheets;
}

/** A test for each scheme in which a page can be shown: light, dark, and the colours of the system. */
export function itInEveryScheme(title: string, run: () => Promise<void>): void {
  const shown = (ways: Shown) => async () => {
    await emulate(ways);
    document.documentElement.setAttribute('style', 'color-scheme: light dark; background: Canvas');
    try {
      await run();
    } finally {
      document.documentElement.removeAttribute('style');
      await emulate({});
    }
  };
  it(`${title}: light`, shown({ 'prefers-color-scheme': 'light' }));
  it(`${title}: dark`, shown({ 'prefers-color-scheme': 'dark' }));
  itWith('forced colours', `${title}: forced colours`, shown({ 'forced-colors': 'active' }));
}
