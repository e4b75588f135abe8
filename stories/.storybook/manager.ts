import { addons } from 'storybook/manager-api';

addons.setConfig({
  layoutCustomisations: {
    // Only the single elements have something to set from outside; the pages get the room instead.
    showPanel: ({ storyId }: { storyId?: string }, usual?: boolean) => (storyId?.startsWith('elements-') ? usual : false),
  },
});
