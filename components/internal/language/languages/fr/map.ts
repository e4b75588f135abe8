/** What is said about the map of the power, in French. */
export const map: Record<string, string> = {
  name: 'Carte de la puissance',
  heading: '{$power}, {$state}',
  axial: 'Puissance axiale de la cornée',
  tangential: 'Puissance tangentielle de la cornée',
  before: 'avant l’opération',
  after: 'après l’opération, comme attendu',
  difference: 'ce que l’opération change (après moins avant)',
  reading: '{$power} à {$direction}, à {$distance} du centre',
  ask: 'Pointez la cornée ou choisissez un endroit :',
  direction: 'Direction du point',
  distance: 'Distance au centre',
  shape: 'Calculée à partir de la kératométrie, non mesurée point par point : une cornée qui s’aplatit vers le limbe comme une cornée moyenne.',
  illustration: 'Illustration : l’étendue de l’aplatissement local près de l’incision et des arcs est une hypothèse.',
};
