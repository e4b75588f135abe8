export const picture: Record<string, string> = {
  copy: 'Copier comme image',
  copied: 'Copié.',
  notCopied: 'Cette page ou ce navigateur ne permet pas de copier des images.',
  save: 'Enregistrer comme image, ou la faire glisser dans un document',
};
