import { fileURLToPath } from 'node:url';
import lit from 'eslint-plugin-lit';
import wc from 'eslint-plugin-wc';
import ts from 'typescript-eslint';

const ROOT = fileURLToPath(new URL('..', import.meta.url));

/** Paths are seen from the root of the repository, where eslint is started with `-c test/eslint.config.js`. */
const CORE = ['core/**/*.ts'];
const COMPONENTS = ['components/**/*.ts'];
const PUBLISHED = [...CORE, ...COMPONENTS];

const STYLE_MAP = {
  group: ['lit/directives/style-map*', 'lit-html/directives/style-map*'],
  message: 'styleMap writes a style attribute, which a strict content security policy drops: use SVG attributes, classes, or .style.setProperty.',
};

export default ts.config(
  { ignores: ['dist/', 'storybook-static/', 'coverage/', 'test/out/'] },
  { files: ['**/*.{ts,js,mjs}'], extends: [ts.configs.recommended], linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: ['**/*.{ts,js,mjs}'],
    rules: {
      eqeqeq: ['error', 'always', { null: 'ignore' }],
      'max-lines': ['warn', { max: 280, skipBlankLines: true }],
      'no-var': 'error',
      'prefer-const': 'error',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports', disallowTypeAnnotations: false }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', ignoreRestSiblings: true }],
    },
  },
  {
    files: PUBLISHED,
    languageOptions: { parserOptions: { project: 'tsconfig.json', tsconfigRootDir: ROOT } },
    rules: {
      '@typescript-eslint/await-thenable': 'error',
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: false }],
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      'no-console': 'error',
      'no-eval': 'error',
      'no-restricted-globals': ['error', 'process', 'Buffer', 'localStorage', 'sessionStorage', 'fetch', 'XMLHttpRequest'],
    },
  },
  {
    files: CORE,
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            { group: ['lit', 'lit/*', 'lit-*', '@lit/*', 'd3', 'd3-*'], message: 'core/ knows neither Lit nor d3.' },
            { group: ['**/components/**', '**/stories/**', '**/test/**'], message: 'core/ is the lowest room.' },
          ],
        },
      ],
      'no-restricted-globals': ['error', 'document', 'window', 'navigator', 'HTMLElement', 'localStorage', 'process', 'Buffer', 'fetch', 'XMLHttpRequest'],
    },
  },
  {
    files: [...COMPONENTS, 'stories/**/*.ts', 'test/components/**/*.ts'],
    extends: [lit.configs['flat/recommended'], wc.configs['flat/recommended']],
    rules: { 'no-restricted-imports': ['error', { patterns: [STYLE_MAP] }] },
  },
  {
    files: COMPONENTS,
    rules: {
      'wc/guard-super-call': 'off',
      'wc/no-closed-shadow-root': 'error',
      'wc/no-typos': 'error',
      'wc/require-listener-teardown': 'error',
      'lit/lifecycle-super': 'error',
      'lit/no-value-attribute': 'error',
      'lit/value-after-constraints': 'error',
      'lit/quoted-expressions': ['error', 'never'],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'TaggedTemplateExpression[tag.name=/^(html|svg)$/] TemplateElement[value.raw=/\\sstyle\\s*=/]',
          message: 'A style attribute is dropped under a strict content security policy: use SVG attributes, classes, or .style.setProperty.',
        },
        {
          selector: 'TaggedTemplateExpression[tag.name=/^(html|svg)$/] TemplateElement[value.raw=/<style/]',
          message: 'A <style> in a template is dropped under a strict content security policy: use static styles.',
        },
      ],
    },
  },
  {
    // chai's assertions are expressions, and a test may reach where a caller may not.
    files: ['test/**/*.{ts,mjs}'],
    rules: { '@typescript-eslint/no-unused-expressions': 'off', '@typescript-eslint/no-non-null-assertion': 'off' },
  },
);
