import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { LitElement, PropertyDeclaration } from 'lit';
import { describe, expect, it } from 'vitest';
import { NAME, elements, readJson, root } from './built.js';

interface Item {
  name: string;
  description?: string;
  default?: string;
  attribute?: string;
  kind?: string;
  readonly?: boolean;
  type?: { text: string };
}

interface Declaration {
  name: string;
  tagName: string;
  description: string;
  members: Item[];
  attributes?: Item[];
  events?: Item[];
  cssParts?: Item[];
  cssProperties?: Item[];
}

interface Manifest {
  modules: { path: string; declarations: Declaration[]; exports: { kind: string; name: string; declaration: { name: string; module: string } }[] }[];
}

type ElementClass = typeof LitElement & (new () => LitElement);

const manifest = readJson<Manifest>('dist/custom-elements.json');
const declarations = manifest.modules.flatMap((module) => module.declarations);

/** Elements that live in the folder of another. */
const GUESTS: Record<string, string> = { step: 'steps' };
const folderOf = (tag: string): string => GUESTS[tag.slice(6)] ?? tag.slice(6);

/** The classes as they are published. */
const classes = (await import(join(root, 'dist/components/index.js'))) as Record<string, ElementClass>;

describe('the manifest', () => {
  it('lists every element, its class and where it is registered, and nothing else', () => {
    const expected = [...elements, ...Object.keys(GUESTS)].map((name) => `astig-${name}`).sort();
    expect(declarations.map(({ tagName }) => tagName).sort()).toEqual(expected);
    const definitions = manifest.modules.flatMap(({ path, exports }) => exports.map((entry) => ({ path, ...entry })));
    const registered = definitions.filter(({ kind }) => kind === 'custom-element-definition');
    expect(registered.map(({ name, path }) => `${name} ${path}`).sort()).toEqual(expected.map((tag) => `${tag} dist/components/${folderOf(tag)}/define.js`));
    expect(definitions).toHaveLength(2 * expected.length);
  });

  it('names paths that are there', () => {
    for (const { path } of manifest.modules) expect(readFileSync(join(root, path), 'utf8')).not.toBe('');
  });
});

describe.each(declarations)('$tagName in the manifest', (declaration) => {
  const Element = classes[declaration.name]!;
  const properties = [...Element.elementProperties].filter(([, options]) => !(options as PropertyDeclaration & { state?: boolean }).state);

  it('has the attributes that the class observes', () => {
    expect((declaration.attributes ?? []).map(({ name }) => name).sort()).toEqual([...Element.observedAttributes].sort());
  });

  it('has the properties of the class, with their attributes', () => {
    const listed = declaration.members.filter(({ kind }) => kind === 'field');
    for (const [name, { attribute }] of properties) {
      const member = listed.find((item) => item.name === name);
      expect(member, String(name)).toBeDefined();
      expect(member!.attribute).toBe(attribute === false ? undefined : typeof attribute === 'string' ? attribute : String(name).toLowerCase());
    }
    expect(listed.filter(({ attribute }) => attribute).length).toBe(properties.filter(([, { attribute }]) => attribute !== false).length);
  });

  it('tells the defaults as they are', () => {
    const made = new Element() as unknown as Record<string, unknown>;
    const written = declaration.members.filter((item) => item.default !== undefined);
    for (const { name, default: value } of written) expect(`${name} ${literal(made[name])}`).toBe(`${name} ${value}`);
  });

  it('has a sentence for everything', () => {
    const { members, attributes = [], events = [], cssParts = [], cssProperties = [] } = declaration;
    for (const { name, description } of [declaration, ...members, ...attributes, ...events, ...cssParts, ...cssProperties]) {
      expect(`${name}: ${description}`).toMatch(/: \S.{3,}/);
    }
  });

  it('shows nothing internal', () => {
    const names = declaration.members.map(({ name }) => name);
    for (const name of ['model', 'caseController', 'planMoved', 'render', 'willUpdate', 'surface', 'sliderModel']) expect(names).not.toContain(name);
  });
});

describe('what can be styled', () => {
  it('is every custom property of the sources', () => {
    const used = new Set(sources('components').flatMap((text) => text.match(/(?<=var\()--astig-[\w-]+/g) ?? []));
    const documented = new Set(declarations.flatMap(({ cssProperties = [] }) => cssProperties.map(({ name }) => name)));
    expect(used.size).toBeGreaterThan(10);
    expect([...documented].sort()).toEqual([...used].sort());
  });

  it.each(declarations.filter(({ tagName }) => !(tagName.slice(6) in GUESTS)))('$tagName documents its parts, as far as they stand in its own files', ({ tagName, cssParts = [] }) => {
    const documented = cssParts.map(({ name }) => name);
    const written = sources(`components/${tagName.slice(6)}`).flatMap((text) => text.match(/(?<=\bpart=")[\w-]+(?=")/g) ?? []);
    expect(documented).toEqual(expect.arrayContaining([...new Set(written)]));
  });
});

describe('what editors read', () => {
  interface Tag { name: string; attributes: { name: string; values?: { name: string }[] }[] }

  it('VS Code offers tags, attributes and values', () => {
    const { tags } = readJson<{ tags: Tag[] }>('dist/vscode.html-custom-data.json');
    expect(tags.map(({ name }) => name).sort()).toEqual(declarations.map(({ tagName }) => tagName).sort());
    const eye = tags.find(({ name }) => name === 'astig-case')!.attributes.find(({ name }) => name === 'eye');
    expect(eye?.values?.map(({ name }) => name)).toEqual(['right', 'left']);
  });

  it('VS Code offers each part and custom property once', () => {
    const { properties, pseudoElements } = readJson<Record<'properties' | 'pseudoElements', { name: string }[]>>('dist/vscode.css-custom-data.json');
    for (const list of [properties, pseudoElements]) expect(new Set(list.map(({ name }) => name)).size).toBe(list.length);
    expect(properties.map(({ name }) => name)).toContain('--astig-ink');
  });

  it('JetBrains editors find their file in package.json', () => {
    const types = readJson<{ name: string; contributions: { html: { elements: { name: string }[] } } }>(readJson<{ 'web-types': string }>('package.json')['web-types']);
    expect(types.name).toBe(NAME);
    expect(types.contributions.html.elements.map(({ name }) => name).sort()).toEqual(declarations.map(({ tagName }) => tagName).sort());
  });
});

function sources(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => readFileSync(join(root, folder, name), 'utf8'));
}

function literal(value: unknown): string {
  if (typeof value === 'string') return `'${value}'`;
  return typeof value === 'object' ? JSON.stringify(value) : String(value);
}
