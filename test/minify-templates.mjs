import { transform } from 'esbuild';
import { readFile } from 'node:fs/promises';
import typescript from 'typescript';

/**
 * esbuild plugin: shortens Lit's html, svg and css templates in files that `filter` matches.
 *
 * Markup: a run of white space that has a line break becomes one space, which is what HTML makes of it when it
 * shows it; templates with <pre> or <textarea> stay. Style sheets without expressions go through esbuild's own CSS
 * minifier, the others have their line breaks shortened. Nothing else is touched, and no dependency is needed.
 */
export function minifyTemplates({ filter }) {
  return {
    name: 'minify-templates',
    setup(build) {
      build.onLoad({ filter }, async ({ path }) => ({
        contents: await shortenTemplates(await readFile(path, 'utf8'), path),
        loader: 'ts',
      }));
    },
  };
}

/** The source with its templates shortened. */
export async function shortenTemplates(source, path = 'source.ts') {
  const edits = [];
  const visit = (node) => {
    if (typescript.isTaggedTemplateExpression(node) && typescript.isIdentifier(node.tag)) {
      const { template, tag } = node;
      if (tag.text === 'css' && template.kind === typescript.SyntaxKind.NoSubstitutionTemplateLiteral) {
        edits.push(styleSheet(source, span(template)));
      } else if (tag.text === 'css' || tag.text === 'html' || tag.text === 'svg') {
        const spans = texts(template).map(span);
        if (tag.text === 'css' || !spans.some(([from, to]) => /<(pre|textarea)\b/i.test(source.slice(from, to)))) {
          for (const [from, to] of spans) edits.push({ from, to, text: oneLine(source.slice(from, to)) });
        }
      }
    }
    typescript.forEachChild(node, visit);
  };
  const file = typescript.createSourceFile(path, source, typescript.ScriptTarget.Latest, true, typescript.ScriptKind.TS);
  const span = (part) => {
    // Head and middle end in `${`, the others in a back quote; each begins with a back quote or a brace.
    const opensHole = part.kind === typescript.SyntaxKind.TemplateHead || part.kind === typescript.SyntaxKind.TemplateMiddle;
    return [part.getStart(file) + 1, part.getEnd() - (opensHole ? 2 : 1)];
  };
  visit(file);

  const done = await Promise.all(edits);
  done.sort((a, b) => b.from - a.from);
  return done.reduce((text, edit) => text.slice(0, edit.from) + edit.text + text.slice(edit.to), source);
}

function texts(template) {
  if (template.kind === typescript.SyntaxKind.NoSubstitutionTemplateLiteral) return [template];
  return [template.head, ...template.templateSpans.map(({ literal }) => literal)];
}

/** A backslash before a line break is a continuation in JavaScript and stays. */
function oneLine(text) {
  return text.replace(/(?<!\\)[ \t]*\r?\n\s*/g, ' ');
}

async function styleSheet(source, [from, to]) {
  const text = source.slice(from, to);
  // An escape means one thing to JavaScript and another to CSS, and a fragment such as a colour is no sheet.
  if (text.includes('\\') || !text.includes('{')) return { from, to, text: oneLine(text) };
  const { code, warnings } = await transform(text, { loader: 'css', minify: true, target: 'esnext', charset: 'utf8', logLevel: 'silent' });
  if (warnings.length > 0) throw new Error(`A style sheet does not parse: ${warnings[0].text}\n${text}`);
  return { from, to, text: code.trim().replace(/[\\`]|\$\{/g, '\\$&') };
}
