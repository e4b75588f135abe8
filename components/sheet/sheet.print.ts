import type { LitElement } from 'lit';

/** Time after which a frame goes whatever the browser tells of the printing, ms. */
const LEFT_OVER = 600_000;

/**
 * A frame that holds what a view shows now and nothing else of the page: the same tree and styles, without life, and what
 * the page has put into its slots. The frame has no address, so nothing is asked of the network.
 */
export async function framed(view: LitElement): Promise<HTMLIFrameElement> {
  const frame = document.createElement('iframe');
  // Where it is not displayed Firefox prints nothing.
  for (const [name, value] of Object.entries({ position: 'fixed', inset: '0 auto auto 0', width: '0', height: '0', border: '0', visibility: 'hidden' })) frame.style.setProperty(name, value);
  frame.setAttribute('aria-hidden', 'true');
  // Firefox replaces the empty document once more, and tells when that is done.
  await new Promise((done) => {
    frame.addEventListener('load', done, { once: true });
    document.body.append(frame);
  });
  const inner = frame.contentDocument!;
  const copy = inner.importNode(shellOf(view), true);
  inner.documentElement.lang = view.shadowRoot!.querySelector('[lang]')?.getAttribute('lang') ?? '';
  inner.title = view.shadowRoot!.querySelector('section')?.getAttribute('aria-label') ?? '';
  const { fontFamily } = getComputedStyle(view);
  inner.body.style.setProperty('font-family', fontFamily);
  inner.body.style.setProperty('margin', '0');
  inner.body.append(copy);
  const root = copy.attachShadow({ mode: 'open' });
  root.append(...[...view.shadowRoot!.childNodes].map((node) => inner.importNode(node, true)));
  const Sheet = (frame.contentWindow as Window & typeof globalThis).CSSStyleSheet;
  root.adoptedStyleSheets = view.shadowRoot!.adoptedStyleSheets.map((style) => {
    const sheet = new Sheet();
    sheet.replaceSync([...style.cssRules].map(({ cssText }) => cssText).join('\n'));
    return sheet;
  });
  return frame;
}

/** The element without its class and its shadow: what the page has given it, for its slots. */
function shellOf(view: LitElement): HTMLElement {
  const shell = document.createElement('div');
  shell.append(...[...view.childNodes].map((node) => node.cloneNode(true)));
  return shell;
}

/** Prints a view alone. Resolves when the browser has shown its dialog. */
export async function printAlone(view: LitElement): Promise<void> {
  const frame = await framed(view);
  const { contentWindow } = frame;
  const away = (): void => frame.remove();
  contentWindow!.addEventListener('afterprint', () => setTimeout(away));
  setTimeout(away, LEFT_OVER);
  contentWindow!.focus();
  contentWindow!.print();
}
