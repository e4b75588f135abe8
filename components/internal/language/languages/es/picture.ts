export const picture: Record<string, string> = {
  copy: 'Copiar como imagen',
  copied: 'Copiado.',
  notCopied: 'Esta página o este navegador no permite copiar imágenes.',
  save: 'Guardar como imagen, o arrastrarla a un documento',
};
