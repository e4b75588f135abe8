import type { Words } from '../internal/language/language.js';

/**
 * The patient's page, for a reader of about nine years: short sentences, one idea each, no word that needs looking up.
 * A test measures it. What is still there after surgery is never called "left", which is the name of an eye.
 *
 * The warning signs are common practice, not taken from one source; the page says so when asked.
 */
export const explainWords = {
  part: 'explain',
  en: {
    title: 'Your eye and its shape',
    lead: 'This page helps you to talk with your eye surgeon. Take your time.',
    aboutRight: 'It is about your right eye.',
    aboutLeft: 'It is about your left eye.',

    shapeTitle: 'What is astigmatism?',
    shapeWindow: 'The front of the eye is a clear window. It bends the light so that you can see.',
    shapeBall: 'Round like a ball: the light meets at one point. You see sharply.',
    shapeEgg: 'More like an egg: the light meets at two points. Things look blurred.',
    shapeName: 'An eye with a shape more like an egg has astigmatism. Most eyes have a little of it. It is not an illness.',
    shapeMeasured: 'Your clinic measured {$amount} dioptres at the front of this eye. Dioptres are also used for glasses.',

    surgeryTitle: 'What can the surgeon do?',
    surgeryLens: 'In cataract surgery, the cloudy lens comes out of the eye. A clear lens goes in. The surgeon can treat astigmatism at the same time.',
    entryTitle: 'The way in',
    entryWhat: 'The surgeon goes in by a very small cut at the edge of the window. The eye gets a bit flatter there.',
    entryPlanned: 'In your plan, this cut is {$place}.',
    entryOpen: 'Your plan does not say yet where.',
    arcsTitle: 'Curved cuts',
    arcsWhat: 'One or two fine, curved cuts near the edge can make the eye a bit rounder.',
    arcsOne: 'Your plan has one of them.',
    arcsTwo: 'Your plan has two of them.',
    lensTitle: 'A special lens',
    lensWhat: 'Some new lenses have a shape that evens out the shape of the eye. They are called toric lenses.',
    lensPlanned: 'Your plan has a toric lens.',
    possible: 'This can help some eyes.',
    notPlanned: 'This is not in your plan.',
    planMayChange: 'The plan can still change.',
    planOpen: 'This plan has open points. Talk about it with your surgeon.',
    asInPhoto: 'The pictures show your eye from the front, as in a photo.',
    nose: 'nose',
    placeTemporal: 'at the side, near your temple',
    placeSuperotemporal: 'at the top, towards your temple',
    placeSuperior: 'at the top',
    placeSuperonasal: 'at the top, towards your nose',
    placeNasal: 'at the side, near your nose',
    placeInferonasal: 'at the bottom, towards your nose',
    placeInferior: 'at the bottom',
    placeInferotemporal: 'at the bottom, towards your temple',

    likelyTitle: 'What is likely afterwards?',
    likelyPlan: 'Think of 100 people with an eye and a plan like yours. Each dot is one of them, when the eye has healed.',
    likelyUnplanned: 'Nothing is planned here yet. So this is for an eye in which astigmatism is not treated. Each dot is one of 100 people.',
    peopleAbout: 'About {$people} of 100 people like you would have',
    peopleAll: 'Almost all of 100 people like you would have',
    peopleNone: 'Almost none of 100 people like you would have',
    likelyLittle: '{$who} very little astigmatism. That is {$limit} dioptres or less. Most people do not notice it.',
    likelySome: '{$who} one dioptre or less.',
    likelyMore: '{$who} more than that. Glasses can help them.',
    likelyGuess: 'These numbers are estimates. They come from the eyes of other people. Your eye may turn out in another way.',
    likelyNone: 'This page has no numbers for your eye yet. Ask your surgeon what is likely for you.',
    likelyRefused: 'This page was given a number that cannot be right. So it shows no numbers. Please tell your clinic.',

    promiseTitle: 'What can nobody promise?',
    promiseWeather: 'A plan is like a weather forecast. It is often right, but it is never sure.',
    promiseHeal: 'Each eye heals in its own way. Some astigmatism may stay.',
    promiseGlasses: 'Nobody can promise that you will see well without glasses.',
    promiseRisk: 'Things can go wrong in any surgery. Ask about the risks.',

    optionsTitle: 'You have a choice',
    glassesTitle: 'Wear glasses',
    glassesWhat: 'Glasses or contact lenses can make up for astigmatism. You can wear them after cataract surgery, too.',
    nothingTitle: 'Do nothing',
    nothingWhat: 'You can keep your astigmatism as it is. You can also wait and think about it.',
    treatTitle: 'Treat it in surgery',
    treatWhat: 'The surgeon can treat it along with the cataract. You may still need glasses.',
    optionsReal: 'These are all real choices. Say what matters to you. You may change your mind.',

    questionsTitle: 'Questions to take with you',
    questionsHow: 'Tick what you want to ask. Then print this page.',
    askAmount: 'How much astigmatism do I have?',
    askNothing: 'What if I do nothing?',
    askBest: 'What is best for my eye, and why?',
    askRisks: 'What can go wrong? What happens then?',
    askGlasses: 'Will I need glasses afterwards? What for?',
    askHome: 'What should I do at home afterwards? What should I not do?',
    askCost: 'Do I have to pay for any of this?',
    askOwn: 'My own questions:',

    warningTitle: 'After surgery, call us now if you have:',
    warnPain: 'sudden pain, or pain that gets worse',
    warnLoss: 'sudden loss of sight',
    warnFlashes: 'flashes of light',
    warnFloaters: 'many new dots or threads that float in your sight',
    warnCurtain: 'a dark curtain over part of your sight',
    warnRed: 'an eye that gets more and more red',
    warnPus: 'pus in the eye',
    warningNow: 'Do not wait for your next visit. Call by day or by night.',

    contactTitle: 'How to reach us',
    contactDefault: 'Call the eye clinic that looks after you. The number is on your letter. If nobody answers, go to the nearest emergency department.',

    estimate: 'The numbers on this page are estimates. They are not a promise. Your surgeon measures your eye, and decides with you.',
    sourceMeasured: 'Where does this number come from?',
    sourceLikely: 'Where do these numbers come from?',
    sourceNotice: 'Who says that most people do not notice it?',
    sourceWarning: 'Where does this list come from?',
  },
} as const satisfies Words;

/** Name of one text of the patient's page. */
export type ExplainId = keyof typeof explainWords.en;
