import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import vue from '@vitejs/plugin-vue';
import { build } from 'vite';

const path = (relative) => fileURLToPath(new URL(relative, import.meta.url));

/** Hosts that are made by a bundler. */
export const BUNDLED = ['react', 'vue', 'svelte', 'deck'];

/** Where they are put. */
export const OUT = path('../out/hosts');

/** Builds them as their developers would. The package is found by its own name, here through its own exports. */
export async function buildHosts() {
  const root = path('../../stories/hosts');
  // Whatever runs this, a test for instance: frameworks and Lit are to be as published.
  process.env.NODE_ENV = 'production';
  await build({
    root,
    base: './',
    configFile: false,
    logLevel: 'warn',
    esbuild: { jsx: 'automatic' },
    plugins: [vue({ template: { compilerOptions: { isCustomElement: (tag) => tag.startsWith('astig-') } } }), svelte({ configFile: false })],
    build: {
      target: 'es2022',
      outDir: OUT,
      emptyOutDir: true,
      rollupOptions: { input: BUNDLED.map((name) => `${root}/${name}/index.html`) },
    },
    worker: { format: 'es' },
  });
}
