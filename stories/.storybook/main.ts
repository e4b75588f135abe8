import type { StorybookConfig } from '@storybook/web-components-vite';
import type { Plugin } from 'vite';
import { customElementsManifest } from '../../test/manifest/manifest.mjs';

/** A custom element can be defined once only, so a changed one needs a new page instead of a hot update. */
const reloadElements: Plugin = {
  name: 'reload-elements',
  handleHotUpdate({ file, server }) {
    if (!/[\\/](core|components)[\\/].*\.ts$/.test(file)) return undefined;
    server.ws.send({ type: 'full-reload' });
    return [];
  },
};

/** What the documentation of the elements is made of, from the sources as they are and not from the last build. */
const manifest: Plugin = {
  name: 'custom-elements-manifest',
  resolveId: (id) => (id === 'virtual:custom-elements' ? id : undefined),
  load: async (id) => (id === 'virtual:custom-elements' ? `export default ${JSON.stringify(await customElementsManifest())}` : undefined),
};

const config: StorybookConfig = {
  framework: '@storybook/web-components-vite',
  stories: ['../**/*.stories.ts'],
  addons: ['@storybook/addon-docs'],
  core: {
    disableTelemetry: true,
    enableCrashReports: false,
    disableWhatsNewNotifications: true,
  },
  // The ground is the stories' own: the built-in backgrounds would paint over it.
  features: { sidebarOnboardingChecklist: false, backgrounds: false, actions: false, interactions: false },
  viteFinal: (vite) => ({
    ...vite,
    // Decorators and fields follow the tsconfig at the root, which vite finds by itself.
    plugins: [...(vite.plugins ?? []), reloadElements, manifest],
    build: { ...vite.build, target: 'es2022' },
    resolve: { ...vite.resolve, dedupe: [...(vite.resolve?.dedupe ?? []), 'lit'] },
  }),
};

export default config;
