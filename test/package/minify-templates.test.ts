import { describe, expect, it } from 'vitest';
import { shortenTemplates } from '../minify-templates.mjs';

describe('templates in the one-file build', () => {
  it.each([
    ['line breaks in markup become one space', 'html`\n  <p>\n    a  b ${x}\n  </p>`', 'html` <p> a  b ${x} </p>`'],
    ['templates inside templates', 'html`<b>\n${ok ? svg`<g>\n  </g>` : ""}\n</b>`', 'html`<b> ${ok ? svg`<g> </g>` : ""} </b>`'],
    ['code between the braces stays', 'html`${[\n  1,\n]}`', 'html`${[\n  1,\n]}`'],
    ['preformatted text stays', 'html`<pre>\n  a\n</pre>`', 'html`<pre>\n  a\n</pre>`'],
    ['escaped line breaks stay', 'html`a \\\n  b`', 'html`a \\\n  b`'],
    ['other templates stay', 'text`a\n  b`; `c\n  d`', 'text`a\n  b`; `c\n  d`'],
    ['a style sheet is minified', 'css`\n  :host { /* why */\n    color: red;\n  }\n`', 'css`:host{color:red}`'],
    ['a style sheet with expressions loses its line breaks', 'css`\n  a { color: ${c};\n  }`', 'css` a { color: ${c}; }`'],
    ['a fragment of a style sheet stays', 'css`10px`', 'css`10px`'],
    ['escapes in a style sheet stay', "css`a::before { content: '\\\\2019';\n}`", "css`a::before { content: '\\\\2019'; }`"],
  ])('%s', async (_, source, shortened) => {
    expect(await shortenTemplates(source)).toBe(shortened);
  });

  it('refuses a broken style sheet', async () => {
    await expect(shortenTemplates('css`a { color: red; }}`')).rejects.toThrow('does not parse');
  });
});
