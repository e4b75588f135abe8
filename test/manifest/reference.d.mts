/** The README's reference of the elements, as Markdown. `manifest` is custom-elements.json. */
export function reference(manifest: object): string;
/** The file with the reference between its two marks, which stay. */
export function withReference(readme: string, manifest: object): string;
