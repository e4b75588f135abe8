/** Runs in the library's page: its markup as static markup, and what of it depends on the incision site. */

const TAGS = ['astig-cornea', 'astig-vectors', 'astig-summary', 'astig-entry', 'astig-sweep', 'astig-options'];
const DEGREES = 360;

/** Steps the case through all whole degrees. `texts` are what the page says at each, to check the floor by. */
export async function record() {
  const owner = document.querySelector('astig-case');
  const elements = TAGS.map((tag) => document.querySelector(tag));
  const start = owner.incisionSite;
  const trees = TAGS.map(() => fresh('root'));
  const texts = [];
  for (let degree = 0; degree < DEGREES; degree += 1) {
    owner.incisionSite = degree;
    await owner.updateComplete;
    for (const element of elements) await element.updateComplete;
    elements.forEach((element, index) => absorb(trees[index], element.shadowRoot, degree));
    texts.push(elements.map(({ shadowRoot }) => shadowRoot.textContent.replace(/\s+/g, '')).join('|'));
  }
  const slots = trees.flatMap((tree, index) => slotsOf(tree, [index]));
  const hosts = TAGS.map((tag, index) => ({ tag, markup: inside(trees[index], start), styles: sheets(elements[index]) }));
  return { hosts, slots, start, texts };
}

/** A node over all degrees: where it is present, and each of its values there. */
function fresh(type) {
  return { type, present: Array(DEGREES).fill(false), values: {}, children: [], byKey: new Map() };
}

/** Takes in a node as it is at one degree. Children are known by their type and their place among those of the type. */
function absorb(tree, node, degree) {
  tree.present[degree] = true;
  const put = (name, value) => ((tree.values[name] ??= Array(DEGREES).fill(null))[degree] = value);
  if (typeof node === 'string') return void put('text', node);
  for (const { name, value } of node.attributes ?? []) put(`@${name}`, value);
  if (node instanceof HTMLInputElement) for (const name of ['value', 'checked']) put(name, node[name]);
  const seen = {};
  let previous = null;
  for (const kid of kidsOf(node)) {
    const type = typeof kid === 'string' ? '#text' : kid.localName;
    seen[type] = (seen[type] ?? 0) + 1;
    previous = childOf(tree, type, seen[type], previous);
    absorb(previous, kid, degree);
  }
}

function childOf(tree, type, place, previous) {
  const key = `${type} ${place}`;
  const known = tree.byKey.get(key);
  if (known) return known;
  const child = fresh(type);
  tree.byKey.set(key, child);
  tree.children.splice(tree.children.indexOf(previous) + 1, 0, child);
  return child;
}

/** Elements, and texts as strings. Lit's markers are no part of hand-written markup; without them neighbouring texts are one. */
function kidsOf(node) {
  const kids = [];
  for (const kid of node.childNodes) {
    if (kid.nodeType === Node.ELEMENT_NODE) kids.push(kid);
    if (kid.nodeType !== Node.TEXT_NODE || kid.data === '') continue;
    if (typeof kids.at(-1) === 'string') kids.push(kids.pop() + kid.data);
    else kids.push(kid.data);
  }
  const blank = node instanceof SVGElement && !(node instanceof SVGTextElement);
  return blank ? kids.filter((kid) => typeof kid !== 'string') : kids;
}

/** All that differs, each with the path to its node, the kind of thing, and its value at every degree. */
function slotsOf({ present, values, children }, path) {
  const here = present.findIndex(Boolean);
  const slots = present.includes(false) ? [{ path, kind: 'present', values: present }] : [];
  for (const [name, each] of Object.entries(values)) {
    // Where the node is away, its values do not matter.
    present.forEach((there, degree) => {
      if (!there) each[degree] = each[degree - 1] ?? each[here];
    });
    if (each.every((value) => value === each[0])) continue;
    slots.push({ path, kind: name.startsWith('@') ? 'attribute' : name, name: name.slice(1), values: each });
  }
  return [...slots, ...children.flatMap((child, index) => slotsOf(child, [...path, index]))];
}

function inside({ children }, degree) {
  return children.map((child) => markup(child, degree)).join('');
}

function markup(tree, degree) {
  const { type, values } = tree;
  if (type === '#text') return escaped(values.text[degree]);
  const opening = `<${type}${Object.entries(values).map(([name, each]) => attribute(name, each[degree])).join('')}>`;
  return type === 'input' ? opening : `${opening}${inside(tree, degree)}</${type}>`;
}

function attribute(name, value) {
  if (value === null || value === false) return '';
  return value === true ? ` ${name}` : ` ${name.replace('@', '')}="${escaped(value)}"`;
}

function escaped(text) {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}

function sheets({ shadowRoot }) {
  return shadowRoot.adoptedStyleSheets.flatMap((sheet) => [...sheet.cssRules].map(({ cssText }) => cssText)).join('\n');
}
