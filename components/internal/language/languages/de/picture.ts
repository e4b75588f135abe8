export const picture: Record<string, string> = {
  copy: 'Als Bild kopieren',
  copied: 'Kopiert.',
  notCopied: 'Diese Seite oder dieser Browser lässt das Kopieren von Bildern nicht zu.',
  save: 'Als Bild speichern oder in ein Dokument ziehen',
};
