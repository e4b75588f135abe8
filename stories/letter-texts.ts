/** What the invented clinic writes itself, around the elements. */
export interface LetterTexts {
  /** The language's own name, for the list of languages. */
  name: string;
  dir: 'ltr' | 'rtl';
  language: string;
  print: string;
  invented: string;
  heading: string;
  greeting: string;
  opening: string;
  eye: string;
  sight: string;
  contact: string;
  closing: string;
}

export type LetterLanguage = 'en' | 'es' | 'de' | 'fr' | 'ar' | 'zh';

/** An invented number of a range that is kept free for films and examples. */
const PHONE = '01632 960 123';

export const LETTER: Record<LetterLanguage, LetterTexts> = {
  en: {
    name: 'English',
    dir: 'ltr',
    language: 'Language',
    print: 'Print',
    invented: 'An invented letter from an invented clinic about an invented eye. No patient is behind it.',
    heading: 'Before your cataract surgery',
    greeting: 'Dear patient,',
    opening: 'You will soon have cataract surgery. Below you see your eye and what we plan. Please read it in peace, and bring your questions.',
    eye: 'Your eye and the plan',
    sight: 'What you may see',
    contact: `Call the Seaside Eye Unit, by day and by night: ${PHONE}.`,
    closing: 'Kind regards, your team at the Seaside Eye Unit',
  },
  es: {
    name: 'Español',
    dir: 'ltr',
    language: 'Idioma',
    print: 'Imprimir',
    invented: 'Una carta inventada de una clínica inventada sobre un ojo inventado. No hay ningún paciente detrás.',
    heading: 'Antes de su operación de cataratas',
    greeting: 'Estimado paciente, estimada paciente:',
    opening: 'Pronto le operaremos de cataratas. Aquí ve su ojo y lo que tenemos previsto. Léalo con calma y traiga sus preguntas.',
    eye: 'Su ojo y el plan',
    sight: 'Lo que quizá vea',
    contact: `Llame a la Seaside Eye Unit, de día y de noche: ${PHONE}.`,
    closing: 'Un cordial saludo, su equipo de la Seaside Eye Unit',
  },
  de: {
    name: 'Deutsch',
    dir: 'ltr',
    language: 'Sprache',
    print: 'Drucken',
    invented: 'Ein erfundener Brief einer erfundenen Klinik über ein erfundenes Auge. Es steht kein Mensch dahinter.',
    heading: 'Vor Ihrer Operation am grauen Star',
    greeting: 'Guten Tag,',
    opening: 'bald wird Ihr grauer Star operiert. Unten sehen Sie Ihr Auge und was wir planen. Bitte lesen Sie es in Ruhe und bringen Sie Ihre Fragen mit.',
    eye: 'Ihr Auge und der Plan',
    sight: 'Was Sie vielleicht sehen',
    contact: `Rufen Sie die Seaside Eye Unit an, bei Tag und bei Nacht: ${PHONE}.`,
    closing: 'Mit freundlichen Grüßen, Ihr Team der Seaside Eye Unit',
  },
  fr: {
    name: 'Français',
    dir: 'ltr',
    language: 'Langue',
    print: 'Imprimer',
    invented: 'Une lettre inventée d’une clinique inventée au sujet d’un œil inventé. Il n’y a aucun patient derrière.',
    heading: 'Avant votre opération de la cataracte',
    greeting: 'Madame, Monsieur,',
    opening: 'Vous allez bientôt être opéré de la cataracte. Vous voyez ici votre œil et ce que nous prévoyons. Lisez-le tranquillement et apportez vos questions.',
    eye: 'Votre œil et le plan',
    sight: 'Ce que vous verrez peut-être',
    contact: `Appelez la Seaside Eye Unit, de jour comme de nuit\u00a0: ${PHONE}.`,
    closing: 'Avec nos salutations les meilleures, votre équipe de la Seaside Eye Unit',
  },
  ar: {
    name: 'العربية',
    dir: 'rtl',
    language: 'اللغة',
    print: 'طباعة',
    invented: 'رسالة مختلقة من عيادة مختلقة عن عين مختلقة. لا يوجد مريض وراءها.',
    heading: 'قبل عملية الماء الأبيض',
    greeting: 'تحية طيبة،',
    opening: 'ستُجرى لكم قريبًا عملية الماء الأبيض. ترون هنا عينكم وما نخطط له. نرجو أن تقرؤوا بهدوء وأن تحضروا أسئلتكم معكم.',
    eye: 'عينكم والخطة',
    sight: 'ما قد ترونه',
    contact: `اتصلوا بوحدة العيون Seaside Eye Unit نهارًا أو ليلًا: \u2066${PHONE}\u2069.`,
    closing: 'مع أطيب التحيات، فريقكم في Seaside Eye Unit',
  },
  zh: {
    name: '简体中文',
    dir: 'ltr',
    language: '语言',
    print: '打印',
    invented: '这是一封虚构的信，来自虚构的医院，说的是虚构的眼睛。背后没有真实的病人。',
    heading: '白内障手术之前',
    greeting: '您好！',
    opening: '您很快要做白内障手术。下面是您的眼睛和我们的方案。请慢慢看，并带上您的问题。',
    eye: '您的眼睛和方案',
    sight: '您可能看到的',
    contact: `请打电话给 Seaside Eye Unit，白天晚上都可以：${PHONE}。`,
    closing: '祝您安好！Seaside Eye Unit 全体人员',
  },
};
