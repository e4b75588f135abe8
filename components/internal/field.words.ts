import type { Words } from './language/language.js';

/** What each field of a case is called, in the form and in messages. */
export const fieldWords = {
  part: 'fields',
  en: {
    eye: 'Which eye',
    age: 'Age',
    kUnit: 'Unit of the readings',
    flatK: 'Flat reading',
    steepK: 'Steep reading',
    steepMeridian: 'Steep meridian',
    backSurface: 'Back surface of the cornea',
    backPower: 'Back surface adds',
    backMeridian: 'Added on meridian',
    incision: 'Incision planned',
    incisionSite: 'Incision site',
    incisionWidth: 'Incision width',
    incisionFlattening: 'Own flattening by the incision',
    arcCount: 'Number of arcs',
    arcMethod: 'Cut by',
    arcSite: 'Arc site',
    arcLength: 'Arc length',
    arcZone: 'Arc zone',
    arcDepth: 'Arc depth',
    arcFlattening: 'Own flattening by the arcs',
    localThickness: 'Thickness at the arc',
    lens: 'Lens planned',
    lensCylinder: 'Lens cylinder',
    lensMeridian: 'Lens meridian',
    risks: 'Known risks',
    ownFigures: 'Own figures',
  },
} as const satisfies Words;

export type FieldId = keyof typeof fieldWords.en;
