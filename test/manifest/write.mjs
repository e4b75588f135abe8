import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { getWebTypesData } from 'custom-element-jet-brains-integration';
import { getVsCodeCssCustomData, getVsCodeHtmlCustomData } from 'custom-element-vs-code-integration';
import { customElementsManifest } from './manifest.mjs';
import { FRAMEWORKS, typingsFor } from './typings.mjs';

/** Writes the manifest and what editors and frameworks make of it. */
export async function writeManifest(dist) {
  const manifest = await customElementsManifest();
  const elements = manifest.modules.flatMap(({ declarations }) => declarations);
  mkdirSync(join(dist, 'types'), { recursive: true });
  for (const framework of FRAMEWORKS) writeFileSync(join(dist, `types/${framework}.d.ts`), typingsFor(framework, elements));
  const write = (name, data) => writeFileSync(join(dist, name), `${JSON.stringify(data, undefined, 2)}\n`);
  write('custom-elements.json', manifest);
  write('vscode.html-custom-data.json', JSON.parse(getVsCodeHtmlCustomData(manifest, {})));
  write('vscode.css-custom-data.json', eachOnce(JSON.parse(getVsCodeCssCustomData(manifest, {}))));
  write('web-types.json', JSON.parse(getWebTypesData(manifest, {})));
}

/** A custom property or a part is listed for each element that has it; an editor would offer it as often. */
function eachOnce(data) {
  const once = (items) => [...new Map(items.map((item) => [item.name, item])).values()];
  return { ...data, properties: once(data.properties), pseudoElements: once(data.pseudoElements) };
}
