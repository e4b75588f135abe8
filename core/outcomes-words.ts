import type { ArcMethod, EyeSide } from './types.js';

/**
 * Words of the trade in English, Spanish, German, French, Arabic and simplified Chinese. Headings are taken apart into
 * what they speak of; which column that makes is decided in `outcomes-sense.ts`. Written for texts as `plain` leaves
 * them: lower case, no accents, German ß as ss, one form of each Arabic letter.
 */
const IDEAS = {
  arc: /\barcs?\b|arcuate|\blri\b|relax|bogen|entlastung|entspannung|\barcos?\b|relaja|قوس|اقواس|弧|松解/,
  lens: /\blens\b|\biols?\b|\btoric\b|linse|\blio\b|\blentes?\b|lentille|implant|عدس|晶体|晶状体/,
  incision: /incision|inzision|(?<!durch)schnitt|\bwound\b|\bentry\b|zugang|herida|شق|جرح|切口/,
  planned: /\bplann(ed|ing)\b|predict|expect|\btarget\b|geplant|erwartet|vorhergesagt|voraussichtlich|\bziel|previst|planead|planificad|esperad|\bprevue?s?\b|planifie|attendu|predit|متوقع|مخطط|计划|预计|预测|预期|目标/,
  before: /\bpre(op\w*)?\b|\bbefore\b|\bvor(her)?\b|\bprae?(op\w*)?\b|\bantes\b|\bprevi[oa]s?\b|\bavant\b|(?<!\p{L})[ولب]?قبل(?!\p{L})|术前|之前|前后(?!表面)/u,
  after: /\bpost(op\w*)?\b|\bafter\b|\bnach(her)?\b|\bdespues\b|\bapres\b|(?<!\p{L})[ولب]?بعد(?!\p{L})|术后|之后|前后(?!表面)/u,
  /** Flattening is what an operation does, not how a meridian is. Nobody says in French that something was planned by "plan". */
  flat: /\bflat(test|ter)?\b|(?<!ab)flach|\bplan[oae]?s?\b|\bplate?s?\b|aplanad|مسطح|تسطح|平坦/,
  steep: /\bsteep(est|er)?\b|steil|\bcurv[oa]s?\b|cambre|\bbombee?s?\b|(?<!\p{L})(ال)?حاده?(?!\p{L})|منحدر|محدب|تحدب|陡/u,
  /** The usual numbers of the flat and the steep reading. */
  first: /\b[kr] ?1\b/,
  second: /\b[kr] ?2\b/,
  magnitude: /astigm|\bcyl|zylinder|\bzyl\b|cilindr|magnitud|\bbetrag\b|لابوري|اسطوان|散光|柱镜/,
  rest: /\bremain|resid|verbleib|\brest(s|es)?\b|restant|متبق|残余|残留/,
  meridian: /meridi|زوال|子午/,
  axis: /\bax[ie]s?\b|(?<!fl|w)achs(?!orge|chau)|\beje\b|محور|(?<!眼)轴/,
  /** What a keratometer says, as against where it says it. */
  reading: /\bk\b|\bk ?[12]\b|\bsim ?k|\bkerat|reading|measur|power|curvature|lectura|medida|medici|potencia|\bpoder\b|curvatura|queratom|mess|\bwerte?\b|brech|kraft|krummung|mesure|lecture|puissance|pouvoir|courbure|قراء|قياس|قوه|قدره|تقوس|انحناء|读数|测量|屈光力|曲率|度数|值/,
  /** One eye of the two; single letters stand for too much else. */
  side: /\b(right|left|rechts?|rechte[rsn]?|links?|linke[rsn]?|derech[oa]|izquierd[oa]|izq|droite?|gauche|od|os|oi|og)\b|يمين|يمني|ايمن|يسار|يسري|ايسر|右|左/,
  /** What is not astigmatism of the front of the cornea: refraction, the back surface, the whole, a change. */
  elsewhere: /refract|refrakt|refracc|\bmanifest|subje[ck]t|spectacle|\bglasses|brille|\bgafas|anteojos|lunettes|\bsph|posteri|\bback\b|ruck|hinter|\bintern|lenticul|\btotal|gesamt|\bsia\b|induc|induz|indui|chang|anderung|cambio|differ|diferenc|\bdelta\b|error|fehler|\becart|خلفي|انكسار|نظار|تغير|فرق|محدث|كلي|后表面|验光|眼镜|变化|引起|诱导|总/,
  /** The front of the cornea in French, not a time. */
  frontFace: /\b(face|surface|segment) avant\b/,
  /** Where arcs lie and how deep a cut goes, which is no length of theirs. */
  zone: /\bzon[ae]s?\b|depth|tiefe?\b|\bprof|diamet|durchmess|tunnel|tunel|منطقه|عمق|قطر(?!ه)|نفق|直径|深|隧道/,
  cornea: /corn|hornhaut|قرني|角膜/,
  width: /width|\bsize\b|breite|\bweite\b|grosse|\banch[ou]|tamano|largeur|taille|عرض|حجم|宽|大小/,
  site: /\bsites?\b|locat|posit|posic|\bplace|ort\b|lage\b|sitio|lugar|ubicac|emplacement|\blieu\b|موقع|مكان|موضع|位置|部位/,
  count: /count|number|anzahl|\bzahl|zahl\b|numero|cantidad|nombre|عدد|数量|数目|数$/,
  length: /length|extent|lange\b|longu|longit|etendue|طول|长/,
  method: /method|metodo|techni|technik|tecnica|verfahren|طريق|تقني|方法|方式|技术/,
  age: /\bage\b|\balter\b|\bedad\b|عمر|年龄/,
  /** Nothing else may be in it: the pressure of an eye is no side. */
  eye: /^(?:(?:eye|side|auge|seite|ojo|lado|oeil|cote|lateralit\w*|od|os|r|l|right|left|or|of|operated|العين|عين|[手术]*眼[别睛]?|侧别)(?: |$))+$/,
  label: /\bid\b|label|\bcase\b|\bcode\b|\bfall\b|kennung|bezeichnung|etiquet|codigo|\bcaso\b|\bcas\b|\bnr\b|رمز|معرف|رقم|编号|标识|病例/,
  /** What tells who somebody is, and is not needed. */
  person: /\b(sur|first|last|fore|full)? ?names?\b|\bsurname|birth|\bdob\b|\bnom\b|prenom|naissance|nombre|apellid|nacimiento|(vor|nach)?name\b|geburt|\bاسم\b|اسم|ميلاد|姓名|名字|出生/,
  radius: /radius|radien|\bradios?\b|rayon|نصف قطر|半径/,
} as const;

/** Two sites, as those of an incision and of arcs. */
const SITES = new RegExp(`(?:${IDEAS.site.source}).*(?:${IDEAS.site.source})`);

export type Idea = keyof typeof IDEAS | 'sites';

/** Everything that a text speaks of. */
export function ideasIn(text: string): ReadonlySet<Idea> {
  // Without its accent a surface is called flat in German.
  const words = plain(text.normalize('NFC').replace(/fläche/gi, ' surface'));
  const ideas = new Set<Idea>((Object.keys(IDEAS) as (keyof typeof IDEAS)[]).filter((idea) => IDEAS[idea].test(words)));
  if (SITES.test(words)) ideas.add('sites');
  return ideas;
}

/** The unit of a power or a length that a heading names. */
export function unitIn(text: string): 'D' | 'mm' | null {
  const words = plain(text);
  if (/\bmm\b|毫米|مم|ملم/.test(words) || IDEAS.radius.test(words)) return 'mm';
  return /\bd$|\b(dptr?|diopt\w*)\b|屈光度|ديوبتر/.test(words) || /[([（]\s*d\s*[)\]）]/i.test(text) ? 'D' : null;
}

/** Whether a heading says that its figures are degrees. */
export function inDegrees(text: string): boolean {
  return /[°º]|[(（]度[)）]/.test(text) || /\b(deg|degrees?|grad|grados|degres?)\b|درج/.test(plain(text));
}

/** Words for the eyes. No letter among them stands for the other eye in one of the six languages. */
const EYES: Readonly<Record<EyeSide, RegExp>> = {
  right: /^(r|re|ra|od|d|right|rechts|rechte[sr]?|derech[oa]|der|droite?|dexter|dextra|يمين|يمني|ايمن|右)$/,
  left: /^(l|le|la|os|oi|og|g|i|left|links|linke[sr]?|izquierd[oa]|izq|gauche|sinister|sinistra|يسار|يسري|ايسر|左)$/,
};

const EYE = /^(eye|auge|ojo|oeil|oculus|عين|眼睛?)$/;

/** Which eye is meant, or null where that is not quite sure. */
export function eyeOf(text: string): EyeSide | null {
  // O.D. has become two words.
  const words = plain(text).replace(/^([a-z]) (?=[a-z]$)/, '$1').replace(/([左右])(眼)/, '$1 $2').split(' ').filter((word) => word && !EYE.test(word.replace(/^ال/, '')));
  const eyes = words.map((word) => (['right', 'left'] as const).find((eye) => EYES[eye].test(word.replace(/^ال/, ''))));
  return eyes.every((eye) => eye === eyes[0]) ? (eyes[0] ?? null) : null;
}

const METHODS: Readonly<Record<ArcMethod, RegExp>> = {
  blade: /blade|knife|manual|diamond|klinge|messer|manuell|diamant|cuchill|bisturi|lame|couteau|manuel|شفره|مشرط|يدوي|刀|手工|手动/,
  laser: /laser|femto|ليزر|فيمتو|激光|飞秒/,
};

/** How arcs were cut, or null where the text tells neither or both. */
export function methodOf(text: string): ArcMethod | null {
  const words = plain(text);
  const [blade, laser] = [METHODS.blade.test(words), METHODS.laser.test(words)];
  return blade === laser ? null : blade ? 'blade' : 'laser';
}

/** Roots of the words for places: up, down, towards the temple, towards the nose. */
const PLACES = [
  [/sup|upper|oben|ober|arriba|haut|علوي|اعلي|上/, 90],
  [/inf|lower|unten|unter|abajo|bas\b|سفلي|اسفل|下/, 270],
  [/temp|schlaf|sien|صدغ|颞/, 0],
  [/nas|انف|鼻/, 180],
] as const;

/** Words beside those for a place that change nothing. */
const BESIDE = /^(side|seite|lado|cote|du|de|del|la|جانب|侧|方)$/;

/** Direction of a named place from the temporal side as in `fromTemporal`, degrees, or null. Two names meet in the middle. */
export function placeOf(text: string): number | null {
  const words = plain(text);
  const [first, second, third] = PLACES.filter(([root]) => root.test(words)).map(([, degrees]) => degrees);
  if (first === undefined || third !== undefined) return null;
  if (!words.split(' ').every((word) => BESIDE.test(word) || PLACES.some(([root]) => root.test(word)))) return null;
  if (second === undefined) return first;
  // Below the temple 270 and 0 meet at 315; opposite places have no middle.
  const apart = Math.abs(first - second);
  return apart === 90 ? (first + second) / 2 : apart === 270 ? 315 : null;
}

const FOLDED: Readonly<Record<string, string>> = { ß: 'ss', œ: 'oe', æ: 'ae', ى: 'ي', ة: 'ه', ٱ: 'ا', ـ: '' };

/** Lower case, without accents and punctuation; words of a name written as one apart. */
export function plain(text: string): string {
  return text
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[ßœæىةٱـ]/g, (letter) => FOLDED[letter]!)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .replace(/(\d)(?=[a-z])/g, '$1 ')
    .trim();
}
