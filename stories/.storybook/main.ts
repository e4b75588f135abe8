import type { StorybookConfig } from '@storybook/web-components-vite';
import type { Plugin } from 'vite';

/** A custom element can be defined once only, so a changed one needs a new page instead of a hot update. */
const reloadElements: Plugin = {
  name: 'reload-elements',
  handleHotUpdate({ file, server }) {
    if (!/[\\/](core|components)[\\/].*\.ts$/.test(file)) return undefined;
    server.ws.send({ type: 'full-reload' });
    return [];
  },
};

const config: StorybookConfig = {
  framework: '@storybook/web-components-vite',
  stories: ['../**/*.stories.ts'],
  addons: [],
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
    plugins: [...(vite.plugins ?? []), reloadElements],
    build: { ...vite.build, target: 'es2022' },
    resolve: { ...vite.resolve, dedupe: [...(vite.resolve?.dedupe ?? []), 'lit'] },
  }),
};

export default config;
