/** How each framework wants to be told of elements: what the file begins with, and what it says of one element. */
const DIALECTS = {
  react: {
    head: `import type { DetailedHTMLProps, HTMLAttributes } from 'react';`,
    open: `declare module 'react' {\n  namespace JSX {\n    interface IntrinsicElements {`,
    close: `    }\n  }\n}`,
    element: ({ tag, name }) => `      '${tag}': DetailedHTMLProps<Omit<HTMLAttributes<${name}>, keyof ${name}Props>, ${name}> & ${name}Props;`,
    listener: ({ event, type, name }) => `  'on${event}'?: (event: ${type} & { readonly currentTarget: ${name} }) => void;`,
  },
  vue: {
    head: `import type { HTMLAttributes, PublicProps } from 'vue';`,
    open: `declare module 'vue' {\n  interface GlobalComponents {`,
    close: `  }\n}`,
    element: ({ tag, name }) => `    '${tag}': new () => ${name} & { $props: ${name}Props & Omit<HTMLAttributes, keyof ${name}Props> & PublicProps };`,
    listener: ({ event, type }) => `  'on${capital(event)}'?: (event: ${type}) => void;`,
  },
  svelte: {
    head: `import type { HTMLAttributes } from 'svelte/elements';`,
    open: `declare module 'svelte/elements' {\n  interface SvelteHTMLElements {`,
    close: `  }\n}`,
    element: ({ tag, name }) => `    '${tag}': Omit<HTMLAttributes<${name}>, keyof ${name}Props> & ${name}Props;`,
    listener: ({ event, type, name }) => `  'on${event}'?: (event: ${type} & { readonly currentTarget: ${name} }) => void;`,
  },
};

export const FRAMEWORKS = Object.keys(DIALECTS);

/** The typings of a framework as text. `elements` are declarations of the manifest. */
export function typingsFor(framework, elements) {
  const { head, open, close, element } = DIALECTS[framework];
  const props = elements.map((declaration) => propsOf(declaration, DIALECTS[framework]));
  const used = new Set(elements.flatMap((declaration) => [declaration.name, ...typesIn(declaration)]));
  return `// Generated from custom-elements.json.
${head}
import type { ${[...used].sort().join(', ')} } from '../components/index.js';

${props.join('\n\n')}

${open}
${elements.map(({ tagName: tag, name }) => element({ tag, name })).join('\n')}
${close}
`;
}

/** Names of types in what can be given and in events. */
function typesIn({ members, events = [] }) {
  const texts = [...members.filter(settable), ...events].map(({ type }) => type.text.replace(/'[^']*'/g, ''));
  return texts.flatMap((text) => text.match(/\b[A-Z]\w+/g) ?? []);
}

function settable({ kind, readonly }) {
  return kind === 'field' && !readonly;
}

/** Properties that can be set, attributes by their own names where these differ, and events. */
function propsOf({ name, tagName, members, attributes = [], events = [] }, { listener }) {
  const properties = members.filter(settable);
  const lines = properties.map((member) => line(member.name, member.attribute ? orText(member) : member.type.text, member));
  for (const attribute of attributes) {
    if (properties.some((member) => member.name === attribute.name)) continue;
    lines.push(line(attribute.name, orText(attribute), attribute));
  }
  for (const event of events) lines.push(`${comment(event)}\n${listener({ event: event.name, type: event.type.text, name })}`);
  return `/** What \`<${tagName}>\` can be given. */\nexport interface ${name}Props {\n${lines.join('\n')}\n}`;
}

/** In a template a number may stand as a text, as in HTML: \`age="70"\`. */
function orText({ type }) {
  return type.text.replace(/\bnumber\b(?!\})/, 'number | string').replace(/\b\d+\b/g, "$& | '$&'");
}

function line(name, type, item) {
  return `${comment(item)}\n  ${/^\w+$/.test(name) ? name : `'${name}'`}?: ${type};`;
}

function comment({ description = '' }) {
  return `  /** ${description.replace(/\s*\n\s*/g, ' ').replaceAll('*/', '*\\/')} */`;
}

/** Vue's name of a listener: \`@astig-change\` becomes \`onAstigChange\`. */
function capital(event) {
  return event.split('-').map((word) => word[0].toUpperCase() + word.slice(1)).join('');
}
