/** The README's reference of the elements, as Markdown. `manifest` is custom-elements.json. */
export function reference(manifest) {
  const elements = manifest.modules.flatMap(({ declarations }) => declarations);
  const shared = sharedBy(elements);
  return [...elements.map((element) => section(element, shared)), sharedSection(shared)].join('\n\n');
}

/** The file with the reference between its two marks, which stay. */
export function withReference(readme, manifest) {
  const [begin, end] = ['<!-- Reference: written by `npm run docs` from the comments in the source. -->', '<!-- End of the reference. -->'];
  const [from, to] = [readme.indexOf(begin), readme.indexOf(end)];
  if (from < 0 || to < from) throw new Error('README.md has lost the marks between which the reference stands.');
  return `${readme.slice(0, from + begin.length)}\n\n${reference(manifest)}\n\n${readme.slice(to)}`;
}

const LISTS = [
  ['events', 'Events'],
  ['cssParts', 'Parts'],
  ['cssProperties', 'Custom properties'],
  ['slots', 'Slots'],
];

/** What all views inherit, told once. */
function sharedBy(elements) {
  const { members = [], attributes = [], cssProperties = [] } = elements.find(({ superclass }) => superclass?.name === 'AstigView') ?? {};
  const inherited = (list) => list.filter(({ inheritedFrom }) => inheritedFrom?.name === 'AstigView');
  return { members: inherited(members), attributes: inherited(attributes), cssProperties: inherited(cssProperties) };
}

function sharedSection(shared) {
  return [`#### Every view`, `All elements but \`<astig-case>\` have these too.`, table(shared.members), list('Custom properties', shared.cssProperties)].filter(Boolean).join('\n\n');
}

function section(element, shared) {
  const own = (items = [], inherited = []) => items.filter(({ name }) => !inherited.some((item) => item.name === name));
  const members = own(element.members, shared.members);
  const lists = LISTS.map(([key, title]) => list(title, own(element[key], shared[key])));
  return [
    `#### \`<${element.tagName}>\``,
    element.description.replace(/\s*\n\s*/g, ' '),
    table(members.filter(({ kind }) => kind === 'field')),
    list('Methods', members.filter(({ kind }) => kind === 'method').map((method) => ({ ...method, name: `${method.name}()` }))),
    ...lists,
  ]
    .filter(Boolean)
    .join('\n\n');
}

function table(fields) {
  if (fields.length === 0) return '';
  const rows = fields.map((field) => [
    field.attribute ? `\`${field.attribute}\`` : '–',
    `\`${field.name}\``,
    `${code(field.type.text.replace(/ \| null$/, ''))}${field.readonly ? ', read-only' : ''}`,
    /^(null|'')$/.test(field.default) ? 'none' : field.default === undefined ? '' : code(field.default),
    oneLine(field.description),
  ]);
  return [['attribute', 'property', 'type', 'default', ''], Array(5).fill('---'), ...rows].map((cells) => `| ${cells.map(cell).join(' | ')} |`).join('\n');
}

function list(title, items) {
  if (items.length === 0) return '';
  return `${title}: ${items.map(({ name, description, default: value }) => `\`${name || 'default'}\` ${oneLine(description)}${value ? ` (${code(value)})` : ''}`).join(' · ')}.`.replace(/\.\.$/, '.');
}

function code(text) {
  return `\`${text.replaceAll('`', '')}\``;
}

function cell(text) {
  return text.replaceAll('|', '\\|');
}

function oneLine(text = '') {
  return text.replace(/\s*\n\s*/g, ' ').replace(/\.$/, '');
}
