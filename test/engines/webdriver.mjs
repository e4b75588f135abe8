/** A small client of the WebDriver protocol: one session, one window. https://www.w3.org/TR/webdriver2/ */

/** Keys that are not characters, by their names in the DOM. https://www.w3.org/TR/webdriver2/#keyboard-actions */
const KEYS = {
  Backspace: '\uE003',
  Tab: '\uE004',
  Enter: '\uE007',
  Shift: '\uE008',
  Control: '\uE009',
  Alt: '\uE00A',
  Escape: '\uE00C',
  Space: ' ',
  PageUp: '\uE00E',
  PageDown: '\uE00F',
  End: '\uE010',
  Home: '\uE011',
  ArrowLeft: '\uE012',
  ArrowUp: '\uE013',
  ArrowRight: '\uE014',
  ArrowDown: '\uE015',
  Insert: '\uE016',
  Delete: '\uE017',
  Meta: '\uE03D',
};

const BUTTONS = ['left', 'middle', 'right'];

export class WebDriver {
  /**
   * @param {string} server address of the driver
   * @param {Record<string, unknown>} capabilities that must be had
   */
  static async start(server, capabilities) {
    const { sessionId } = await command('POST', `${server}/session`, { capabilities: { alwaysMatch: capabilities } });
    return new WebDriver(`${server}/session/${sessionId}`);
  }

  constructor(session) {
    this.session = session;
    this.mouse = new Mouse(this);
    this.keyboard = new Keyboard(this);
  }

  post(path, body = {}) {
    return command('POST', this.session + path, body);
  }

  goto(url) {
    return this.post('/url', { url });
  }

  url() {
    return command('GET', `${this.session}/url`);
  }

  /** Runs the body of a function in the page. */
  execute(script, ...args) {
    return this.post('/execute/sync', { script, args });
  }

  actions(source) {
    return this.post('/actions', { actions: [source] });
  }

  /** Lets go of every key and button. */
  release() {
    return command('DELETE', `${this.session}/actions`);
  }

  /** Gives the page, not the window, a size in CSS px, and the window a corner on the screen if told to. */
  async setViewport({ width, height, x, y }) {
    for (let round = 0; round < 20; round += 1) {
      const [innerWidth, innerHeight] = await this.execute('return [innerWidth, innerHeight]');
      if (innerWidth === width && innerHeight === height) return;
      const outer = await command('GET', `${this.session}/window/rect`);
      await this.post('/window/rect', { x: x ?? outer.x, y: y ?? outer.y, width: outer.width + width - innerWidth, height: outer.height + height - innerHeight });
      // The window has its size before the page has heard of it.
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    throw new Error(`The page does not take the size of ${width} × ${height}.`);
  }

  /** @returns {Promise<string>} the viewport as PNG in base64 */
  screenshot() {
    return command('GET', `${this.session}/screenshot`);
  }

  quit() {
    return command('DELETE', this.session);
  }
}

/** As puppeteer's. */
class Mouse {
  constructor(driver) {
    this.driver = driver;
    this.pressed = new Set();
  }

  act(...actions) {
    return this.driver.actions({ type: 'pointer', id: 'mouse', parameters: { pointerType: 'mouse' }, actions });
  }

  move(x, y) {
    return this.act({ type: 'pointerMove', duration: 0, origin: 'viewport', x, y });
  }

  down({ button = 'left' } = {}) {
    this.pressed.add(button);
    return this.act({ type: 'pointerDown', button: BUTTONS.indexOf(button) });
  }

  up({ button = 'left' } = {}) {
    this.pressed.delete(button);
    return this.act({ type: 'pointerUp', button: BUTTONS.indexOf(button) });
  }

  async click(x, y, options) {
    await this.move(x, y);
    await this.down(options);
    await this.up(options);
  }

  async reset() {
    for (const button of this.pressed) await this.up({ button });
    await this.move(0, 0);
  }
}

/** As puppeteer's. */
class Keyboard {
  constructor(driver) {
    this.driver = driver;
    this.pressed = new Set();
    this.repeats = 0;
  }

  /** A key that is down and goes down again repeats. No keyboard presses a key that it holds, so one more presses it. */
  down(key) {
    const repeats = this.pressed.has(key);
    this.pressed.add(key);
    return this.act(repeats ? `repeat-${(this.repeats += 1)}` : 'keyboard', 'keyDown', key);
  }

  up(key) {
    this.pressed.delete(key);
    return this.act('keyboard', 'keyUp', key);
  }

  act(id, type, key) {
    return this.driver.actions({ type: 'key', id, actions: [{ type, value: valueOf(key) }] });
  }

  async press(key) {
    await this.down(key);
    await this.up(key);
  }

  async type(text) {
    for (const character of text) await this.press(character);
  }
}

function valueOf(key) {
  const value = KEYS[key] ?? key;
  if ([...value].length !== 1) throw new Error(`No key is called ${key} here.`);
  return value;
}

async function command(method, address, body) {
  const response = await fetch(address, { method, body: body && JSON.stringify(body) });
  const { value } = await response.json();
  if (!response.ok) throw new Error(`WebDriver ${method} ${address}: ${value?.error}: ${value?.message}`);
  return value;
}
