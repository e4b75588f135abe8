/** What is said about the map of the power, in Spanish. */
export const map: Record<string, string> = {
  name: 'Mapa de la potencia',
  heading: '{$power}, {$state}',
  axial: 'Potencia axial de la córnea',
  tangential: 'Potencia tangencial de la córnea',
  before: 'antes de la operación',
  after: 'después de la operación, según lo esperado',
  difference: 'lo que cambia la operación (después menos antes)',
  reading: '{$power} a {$direction}, a {$distance} del centro',
  ask: 'Señale un punto de la córnea o elija un lugar:',
  direction: 'Dirección',
  distance: 'Distancia desde el centro',
  shape: 'Calculado a partir de la queratometría, no medido punto por punto: una córnea que se aplana hacia el limbo como una córnea media.',
  illustration: 'Ilustración: hasta dónde llega el aplanamiento local junto a la incisión y los arcos es una suposición.',
};
