/** Script of a page of its own (`framed` in blur-support): notes offences from the very start, then loads the library. */
import type { Frame } from './blur-support.js';

const frame = window as unknown as Frame;
frame.violations = [];
frame.said = [];
document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => frame.violations.push(`${violatedDirective} ${blockedURI}`));
for (const event of ['error', 'unhandledrejection']) addEventListener(event, () => frame.said.push(event));
for (const kind of ['log', 'info', 'warn', 'error', 'debug'] as const) console[kind] = (...words: unknown[]) => frame.said.push(words.join(' '));
parent.window.prepareFrame?.(frame);
const { blurPicture } = await import('../../components/internal/blur/blur-client.js');
// An array of the other page would be of another kind.
frame.blurPicture = (picture, listener) => blurPicture({ ...picture, data: new Uint8ClampedArray(picture.data) }, listener);
parent.dispatchEvent(new Event('frame-ready'));
