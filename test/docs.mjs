/** `npm run docs`: writes the reference of the elements into README.md. Needs a build. */
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { withReference } from './manifest/reference.mjs';

const path = (name) => fileURLToPath(new URL(`../${name}`, import.meta.url));

const manifest = JSON.parse(readFileSync(path('dist/custom-elements.json'), 'utf8'));
writeFileSync(path('README.md'), withReference(readFileSync(path('README.md'), 'utf8'), manifest));
