import { relative } from 'node:path';

/** What lists of the manifest hold, apart from members. */
const LISTS = ['attributes', 'events', 'cssParts', 'cssProperties', 'cssStates', 'slots'];

/**
 * Plugin for the manifest analyzer: keeps what is public, and names files, attributes and defaults as they are published.
 * A member without a docstring is not public, for every public name here has one.
 * @param {string} root the folder of the repository
 * @param {Record<string, unknown>} defaults what `DEFAULTS.name` stands for in the source
 */
export function publicApi(root, defaults) {
  const published = (path) => path && relative(root, path).replaceAll('\\', '/').replace(/^(.*)\.ts$/, 'dist/$1.js');
  return {
    name: 'public-api',
    analyzePhase({ ts, node, moduleDoc }) {
      if (ts.isClassDeclaration(node)) readProperties(ts, node, moduleDoc, defaults);
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
 * `@property(number('flat-k'))`: the analyzer reads object literals alone, so the attribute's name is taken from the call.
 * Defaults that are written as `DEFAULTS.flatK` are looked up.
 */
function readProperties(ts, node, moduleDoc, defaults) {
  const declaration = moduleDoc.declarations?.find(({ name }) => name === node.name?.text);
  for (const member of node.members.filter(ts.isPropertyDeclaration)) {
    const field = declaration?.members?.find(({ name }) => name === member.name.getText());
    if (!field) continue;
    const attribute = declaration.attributes?.find(({ fieldName }) => fieldName === field.name);
    const name = attributeOfCall(ts, member);
    if (name) field.attribute = name;
    if (name && attribute) attribute.name = name;
    const [, constant] = /^DEFAULTS\.(\w+)$/.exec(member.initializer?.getText() ?? '') ?? [];
    if (constant) field.default = literal(defaults[constant]);
    if (constant && attribute) attribute.default = field.default;
  }
}

function attributeOfCall(ts, member) {
  const calls = (ts.getDecorators(member) ?? []).map(({ expression }) => expression).filter(ts.isCallExpression);
  const [options] = calls.find(({ expression }) => expression.getText() === 'property')?.arguments ?? [];
  return options && ts.isCallExpression(options) ? options.arguments.find(ts.isStringLiteral)?.text : undefined;
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
