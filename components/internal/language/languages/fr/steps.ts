export const steps: Record<string, string> = {
  name: 'Étapes',
  back: 'Retour',
  next: 'Suivant',
  at: 'Étape {$step} sur {$count}',
  refused: 'Cette étape ne peut pas être montrée :',
  noCase: 'Rien à montrer pour l’instant : il faut un astig-case à l’intérieur, autour, ou son id dans « for ».',
  predict: 'Prédisez d’abord : que restera-t-il ?',
  plane: 'Votre attente dans le plan des angles doublés',
  magnitude: 'Amplitude',
  meridian: 'Méridien cambré',
  show: 'Montrer le résultat',
  verdict: 'Vous attendiez {$guess} ; l’estimation est de {$result}. L’écart est de {$error}.',
};
