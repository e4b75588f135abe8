import { setCustomElementsManifest } from '@storybook/web-components-vite';
import type { Preview } from '@storybook/web-components-vite';
import manifest from 'virtual:custom-elements';
import '../../components/define.js';
import '../page.css';

setCustomElementsManifest(manifest);

const preview: Preview = {
  parameters: {
    layout: 'padded',
    controls: { expanded: false, sort: 'none' },
    options: {
      storySort: {
        order: [
          'The whole picture',
          'How sure is this?',
          'A letter from the clinic',
          'In another look',
          'The day list',
          ['All six', 'Alder', 'Birch', 'Cedar', 'Dogwood', 'Elm', 'Fir'],
          'Elements',
          ['astig-case', 'astig-cornea', 'astig-vectors', 'astig-summary', 'astig-entry', 'astig-sweep', 'astig-options', 'astig-sight', 'astig-explain', 'astig-sheet', 'astig-pencil'],
        ],
      },
    },
  },
  globalTypes: {
    scheme: {
      description: 'Light or dark ground',
      toolbar: {
        title: 'Ground',
        icon: 'contrast',
        dynamicTitle: true,
        items: [
          { value: 'system', title: 'Ground as the system has it' },
          { value: 'light', title: 'Light ground' },
          { value: 'dark', title: 'Dark ground' },
        ],
      },
    },
    direction: {
      description: 'Direction of the page',
      toolbar: {
        title: 'Direction',
        icon: 'transfer',
        dynamicTitle: true,
        items: [
          { value: 'ltr', title: 'Left to right' },
          { value: 'rtl', title: 'Right to left' },
        ],
      },
    },
    text: {
      description: 'Size of the text',
      toolbar: {
        title: 'Text',
        icon: 'paragraph',
        dynamicTitle: true,
        items: [
          { value: '100', title: 'Text 100 %' },
          { value: '200', title: 'Text 200 %' },
        ],
      },
    },
  },
  initialGlobals: { scheme: 'system', direction: 'ltr', text: '100' },
  // The manifest tells of everything; only what a story hands on can be set there.
  argTypesEnhancers: [
    ({ argTypes, initialArgs }) =>
      Object.fromEntries(Object.entries(argTypes).map(([name, type]) => [name, name in initialArgs ? type : { ...type, control: false as const }])),
  ],
  decorators: [
    (story, { globals }) => {
      // On the root and not on a wrapper: the ground, the scroll bars and `rem` belong to the root.
      const root = document.documentElement;
      root.dataset.scheme = String(globals.scheme);
      root.dataset.text = String(globals.text);
      root.dir = String(globals.direction);
      return story();
    },
  ],
};

export default preview;
