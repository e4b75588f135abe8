import type { Preview } from '@storybook/web-components-vite';
import '../../components/define.js';

const preview: Preview = {
  parameters: {
    layout: 'padded',
    controls: { expanded: false, sort: 'none' },
  },
};

export default preview;
