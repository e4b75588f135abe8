/** What is said about the map of the power, in German. */
export const map: Record<string, string> = {
  name: 'Karte der Brechkraft',
  heading: '{$power}, {$state}',
  axial: 'Axiale Brechkraft der Hornhaut',
  tangential: 'Tangentiale Brechkraft der Hornhaut',
  before: 'vor der Operation',
  after: 'nach der Operation, wie erwartet',
  difference: 'was die Operation ändert (danach minus davor)',
  reading: '{$power} bei {$direction}, {$distance} von der Mitte',
  ask: 'Zeigen Sie auf die Hornhaut, oder wählen Sie eine Stelle:',
  direction: 'Richtung',
  distance: 'Abstand von der Mitte',
  shape: 'Aus der Keratometrie berechnet, nicht Punkt für Punkt gemessen: eine Hornhaut, die zum Limbus hin so flacher wird wie eine durchschnittliche.',
  illustration: 'Illustration: Wie weit die örtliche Abflachung bei Schnitt und Bogenschnitten reicht, ist angenommen.',
};
