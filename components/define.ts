// Registers every element of the library.
import './case/define.js';
import './cornea/define.js';
import './entry/define.js';
import './explain/define.js';
import './options/define.js';
import './outcomes/define.js';
import './pencil/define.js';
import './sheet/define.js';
import './sight/define.js';
import './steps/define.js';
import './summary/define.js';
import './sweep/define.js';
import './vectors/define.js';
