export const steps: Record<string, string> = {
  name: 'Pasos',
  back: 'Atrás',
  next: 'Siguiente',
  at: 'Paso {$step} de {$count}',
  refused: 'Este paso no se puede mostrar:',
  noCase: 'Aún no hay nada que mostrar: hace falta un astig-case dentro, alrededor o su id en «for».',
  predict: 'Primero, prediga: ¿qué quedará?',
  plane: 'Lo que usted espera en el plano de ángulos dobles',
  magnitude: 'Magnitud',
  meridian: 'Meridiano curvo',
  show: 'Mostrar el resultado',
  verdict: 'Usted esperaba {$guess}; la estimación es {$result}. La diferencia es {$error}.',
};
