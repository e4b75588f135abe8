/** The custom elements manifest of the sources as they are, with paths as they are published. */
export function customElementsManifest(): Promise<object>;
