/** Runs in the floor's page: turns the pointer into a whole degree and writes what is different there. */

export function replay({ slots, start, tags }) {
  const roots = tags.map((tag) => document.querySelector(tag).shadowRoot);
  const places = slots.map((slot) => place(slot, roots, start));
  const show = (degree) => places.filter((each) => write(each, each.values[degree])).length > 0;
  show(start);
  const count = { moves: 0 };
  const drawing = roots[0].querySelector('svg');
  follow(drawing, (degree) => {
    if (show(degree)) count.moves += 1;
  });
  globalThis.bench = { drawing, handle: drawing.querySelector('[part=incision-handle]'), count };
  globalThis.floor = { show, text: () => roots.map(said).join('|') };
}

/** Where a value goes, and what stands there; the static markup has all nodes. */
function place({ path: [host, ...path], kind, name, values }, roots, start) {
  const node = path.reduce((parent, index) => parent.childNodes[index], roots[host]);
  const present = kind === 'present';
  return { node, kind, name, values, mark: present ? document.createComment('') : null, shown: present || values[start] };
}

/** Whether there was anything to write. */
function write(each, value) {
  if (value === each.shown) return false;
  each.shown = value;
  const { node, kind, name, mark } = each;
  if (kind === 'text') node.data = value;
  else if (kind === 'present') (value ? mark : node).replaceWith(value ? node : mark);
  else if (kind !== 'attribute') node[kind] = value;
  else if (value === null) node.removeAttribute(name);
  else node.setAttribute(name, value);
  return true;
}

function follow(drawing, show) {
  drawing.addEventListener('pointerdown', ({ pointerId }) => {
    const { left, top, width, height } = drawing.getBoundingClientRect();
    drawing.setPointerCapture(pointerId);
    drawing.onpointermove = ({ clientX, clientY }) => {
      const degrees = (Math.atan2(top + height / 2 - clientY, clientX - left - width / 2) * 180) / Math.PI;
      show((Math.round(degrees) + 360) % 360);
    };
  });
  drawing.addEventListener('pointerup', () => (drawing.onpointermove = null));
}

function said({ childNodes }) {
  const texts = [...childNodes].filter(({ nodeType, localName }) => nodeType !== Node.COMMENT_NODE && localName !== 'style');
  return texts.map(({ textContent }) => textContent).join('').replace(/\s+/g, '');
}
