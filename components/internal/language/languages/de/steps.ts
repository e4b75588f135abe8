export const steps: Record<string, string> = {
  name: 'Schritte',
  back: 'Zurück',
  next: 'Weiter',
  at: 'Schritt {$step} von {$count}',
  refused: 'Dieser Schritt lässt sich nicht zeigen:',
  noCase: 'Noch nichts zu zeigen: Hierzu gehört ein astig-case darin, darum herum oder dessen id in „for“.',
  predict: 'Erst vorhersagen: Was wird bleiben?',
  plane: 'Ihre Erwartung in der Ebene der verdoppelten Winkel',
  magnitude: 'Betrag',
  meridian: 'Steiler Meridian',
  show: 'Ergebnis zeigen',
  verdict: 'Sie haben {$guess} erwartet; geschätzt sind {$result}. Der Unterschied beträgt {$error}.',
};
