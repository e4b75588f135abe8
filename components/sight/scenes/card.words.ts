import type { Words } from '../../internal/language/language.js';

/** The paragraphs of the reading card, which fill one card in every language. Catalogues hold them with the other texts. */
export const cardWords = {
  part: 'sight',
  en: {
    card1: 'Good morning.',
    card2: 'The ferry leaves at ten past ten.',
    card3: 'Bring a warm coat, for the wind on the quay is fresh today. Breakfast is served on board.',
    card4: 'Tickets are sold at the small blue hut beside the crane. Bicycles travel free of charge and stand at the stern, dogs on a lead are welcome.',
    card5: 'The crossing takes forty minutes. Coffee, tea and hot soup are served below deck. Please keep hold of the rail when the boat turns into the harbour, and wait until the gangway is in place. The last boat back leaves at half past six.',
  },
} as const satisfies Words;
