import { relative } from 'node:path';

/** What lists of the manifest hold, apart from members. */
const LISTS = ['attributes', 'events', 'cssParts', 'cssProperties', 'cssStates', 'slots'];

/**
 * Plugin for the manifest analyzer: keeps what is public, and names files, attributes and defaults as they are published.
 * A member without a docstring is not public, for every public name here has one.
 * @param {string} root the folder of the repository
 * @param {{ DEFAULTS: Record<string, unknown>, LIMITS: Record<string, unknown> }} core the fields of a plan
 */
export function publicApi(root, core) {
  const published = (path) => path && relative(root, path).replaceAll('\\', '/').replace(/^(.*)\.ts$/, 'dist/$1.js');
  return {
    name: 'public-api',
    analyzePhase({ ts, node, moduleDoc }) {
      if (ts.isClassDeclaration(node)) readFieldsOfPlan(ts, node, moduleDoc, core);
    },
    packageLinkPhase({ customElementsManifest }) {
      const modules = customElementsManifest.modules.map(({ declarations = [], path, ...module }) => ({
        ...module,
        path: published(path),
        declarations: declarations.filter(({ tagName }) => tagName).map((declaration) => publicParts(declaration, published)),
      }));
      const elements = modules.flatMap(({ path, declarations }) => declarations.map(({ name, tagName }) => ({ path, name, tagName })));
      for (const module of modules) module.exports = exportsOf(module.path, elements);
      customElementsManifest.modules = modules.filter(({ exports }) => exports.length > 0).sort((a, b) => (a.path < b.path ? -1 : 1));
    },
  };
}

/**
 * What a class only declares, by the name of a field of a plan: `<astig-case>` makes properties of these in one loop, which
 * the analyzer does not follow. Numbers and words have attributes; the defaults are those of a plan.
 */
function readFieldsOfPlan(ts, node, moduleDoc, { DEFAULTS, LIMITS }) {
  const declaration = moduleDoc.declarations?.find(({ name }) => name === node.name?.text);
  const declared = node.members.filter(({ modifiers }) => modifiers?.some(({ kind }) => kind === ts.SyntaxKind.DeclareKeyword));
  const names = declared.map(({ name }) => name.getText()).filter((name) => name in DEFAULTS);
  if (!declaration || names.length === 0) return;
  for (const field of declaration.members.filter(({ name }) => names.includes(name))) {
    const { name, type, description } = field;
    field.default = literal(DEFAULTS[name]);
    if (!(name in LIMITS) && typeof DEFAULTS[name] !== 'string') continue;
    field.attribute = name.replace(/[A-Z]/g, '-$&').toLowerCase();
    declaration.attributes.push({ name: field.attribute, type, description, fieldName: name, default: field.default });
  }
  const order = declaration.members.map(({ name }) => name);
  declaration.attributes.sort((a, b) => order.indexOf(a.fieldName) - order.indexOf(b.fieldName));
}

function publicParts({ members = [], ...declaration }, published) {
  const publishedOrigin = ({ inheritedFrom, ...item }) => {
    return inheritedFrom ? { ...item, inheritedFrom: { ...inheritedFrom, module: published(inheritedFrom.module) } } : item;
  };
  const shown = members.filter(({ privacy, description, static: ofClass }) => (privacy ?? 'public') === 'public' && description && !ofClass);
  const result = { ...declaration, members: shown.map(publishedOrigin) };
  for (const list of LISTS) {
    if (declaration[list]?.length) result[list] = declaration[list].map(publishedOrigin);
    else delete result[list];
  }
  return result;
}

/** A class file exports the class; the define file beside it, which leaves the rest to a helper, registers the tag. */
function exportsOf(path, elements) {
  return elements.flatMap(({ path: module, name, tagName }) => {
    if (path === module) return [{ kind: 'js', name, declaration: { name, module } }];
    if (path === module.replace(/[^/]*$/, 'define.js')) return [{ kind: 'custom-element-definition', name: tagName, declaration: { name, module } }];
    return [];
  });
}

function literal(value) {
  return typeof value === 'string' ? `'${value}'` : String(value);
}
