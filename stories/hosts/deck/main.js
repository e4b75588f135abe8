import Reveal from 'reveal.js';
import 'reveal.js/dist/reveal.css';
import 'reveal.js/dist/theme/white.css';
import 'astigmatism-elements/define.js';
import './deck.css';

const deck = new Reveal({ width: 960, height: 700, margin: 0.04, hash: true });
await deck.initialize();
