/** Words in six languages. */
import { describe, expect, test } from 'vitest';
import { OUTCOME_COLUMNS, readTable, type OutcomeColumn } from '../../core/outcomes.js';
import { eyeOf, ideasIn, inDegrees, methodOf, placeOf, unitIn } from '../../core/outcomes-words.js';

const columnOf = (heading: string): OutcomeColumn | null => readTable(`${heading}\tz\n1\t2`, { delimiter: '\t' }).headings[0]!.column;

const HEADINGS: Record<OutcomeColumn, string[]> = {
  label: ['ID', 'Case', 'Code', 'Fall', 'Kennung', 'Caso', 'Código', 'Cas', 'Étiquette', 'الرمز', 'رقم الحالة', '编号', '病例', 'Eye ID'],
  eye: ['Eye', 'Side', 'Auge', 'Seite', 'Ojo', 'Lado', 'Œil', 'Côté', 'Latéralité', 'العين', '眼别', '眼', 'OD/OS', 'R/L', 'operated eye', '术眼', 'Right or left'],
  flatBefore: ['Flat K pre-op', 'pre-op K flat (D)', 'K flat before', 'flattest reading, preoperative', 'flache K vorher', 'K flach präoperativ', 'flachste K prä-OP', 'K plana preoperatoria', 'K más plana antes', 'K plat préop', 'K la plus plate avant', 'القراءة المسطحة قبل العملية', '术前平坦K', '手术前平坦角膜曲率', 'R1 pre (mm)', 'FLAT_K_PRE'],
  steepBefore: ['Steep K pre', 'preop steep K', 'steile K vorher', 'K steil vor OP', 'K curva antes', 'K más curva preop', 'K cambré avant', 'K le plus bombé préopératoire', 'القراءة الحادة قبل', '术前陡峭K'],
  magnitudeBefore: ['Astigmatism before (D)', 'corneal cylinder pre-op', 'Astigmatismus vorher', 'Zylinder präoperativ', 'Astigmatismo antes', 'cilindro preoperatorio', 'Astigmatisme avant', 'cylindre préopératoire', 'اللابؤرية قبل', '术前散光', '术前柱镜'],
  meridianBefore: ['Steep meridian before', 'steep axis pre-op', 'steiler Meridian vorher', 'steile Achse präoperativ', 'meridiano curvo antes', 'eje más curvo antes', 'méridien cambré avant', 'axe le plus cambré avant', 'خط الزوال الحاد قبل', 'المحور الحاد قبل', '术前陡峭子午线', '术前陡峭轴'],
  flatAfter: ['Flat K post', 'postop flat K', 'flache K nachher', 'K plana después', 'K plat après', 'K مسطح بعد', '术后平坦K'],
  steepAfter: ['Steep K post-op', 'steile K postoperativ', 'K curva postoperatoria', 'K cambré postop', 'K الحادة بعد', '术后陡峭K'],
  magnitudeAfter: ['Astigmatism after', 'Astigmatismus nachher', 'Astigmatismo después', 'Astigmatisme après', 'اللابؤرية بعد', '术后散光'],
  meridianAfter: ['Steep meridian after', 'steiler Meridian nachher', 'Meridiano más curvo después', 'Méridien cambré après', 'خط الزوال الحاد بعد', '术后陡峭子午线'],
  incisionSite: ['Incision site', 'site of incision (°)', 'incision axis', 'entry position', 'Schnittort', 'Ort des Schnitts', 'Schnittlage', 'Zugang Ort', 'sitio de la incisión', 'lugar de la incisión', "site de l'incision", 'position de l’incision', 'موقع الشق', '切口位置', 'Planned incision site'],
  incisionWidth: ['Incision width', 'incision size mm', 'wound width', 'Schnittbreite', 'Inzisionsgröße', 'ancho de la incisión', 'tamaño de incisión', "largeur de l'incision", 'عرض الشق', '切口宽度', '切口大小'],
  arcCount: ['Number of arcs', 'arc count', 'LRI number', 'Anzahl Bögen', 'Zahl der Entlastungsschnitte', 'número de arcos', 'nombre d’arcs', 'nombre d’incisions relaxantes', 'عدد الأقواس', '弧形切开数量'],
  arcLength: ['Arc length', 'length of relaxing incision', 'Bogenlänge', 'longitud del arco', 'longueur des arcs', 'طول القوس', '弧长'],
  arcSite: ['Arc site', 'arc position', 'relaxing incision meridian', 'Ort des Bogens', 'posición del arco', 'position de l’arc', 'موقع القوس', '弧形切开位置'],
  arcMethod: ['Arc method', 'Bogen: Verfahren', 'Bogentechnik', 'técnica de los arcos', 'technique des arcs', 'طريقة القوس', '弧形切开方式'],
  lensCylinder: ['Lens cylinder at the cornea', 'IOL cyl, corneal plane', 'toric cylinder (cornea)', 'Linsenzylinder in Hornhautebene', 'Zylinder der Linse an der Hornhaut', 'cilindro de la lente en la córnea', 'cilindro de la LIO, plano corneal', 'cylindre de l’implant à la cornée', 'أسطوانة العدسة عند القرنية', '角膜平面人工晶体柱镜'],
  lensMeridian: ['Lens meridian', 'IOL axis', 'Linsenachse', 'Linsenmeridian', 'eje de la lente', 'axe de l’implant', 'محور العدسة', '人工晶体轴位'],
  age: ['Age', 'Alter', 'Edad', 'Âge', 'العمر', '年龄'],
  predictedMagnitude: ['Planned remaining astigmatism', 'predicted residual', 'target cylinder post-op', 'geplanter Restastigmatismus', 'erwarteter Zylinder', 'astigmatismo restante previsto', 'cilindro esperado', 'astigmatisme résiduel prévu', 'astigmatisme attendu', 'اللابؤرية المتبقية المتوقعة', '预期残余散光'],
  predictedMeridian: ['Planned steep meridian', 'predicted steep axis', 'geplanter steiler Meridian', 'meridiano más curvo previsto', 'méridien cambré prévu', 'خط الزوال الحاد المتوقع', '预期陡峭子午线'],
};

describe('headings', () => {
  const cases = OUTCOME_COLUMNS.flatMap((column) => [column as string, ...HEADINGS[column]].map((heading) => [heading, column] as const));
  test.each(cases)('%s', (heading, column) => expect(columnOf(heading)).toBe(column));

  test.each([
    'Date', 'Datum', 'Surgeon', 'Patient height', 'Axis', 'Achse', 'Kmax before', 'posterior K', 'Average K pre', 'mittlere K vorher', 'Durchschnitt vorher', 'K1', 'flat K',
    'steep K', 'astigmatism', 'flat axis pre', 'cylinder axis post', 'axis pre', 'planned incision', 'eye pressure', 'before', 'nachher', 'visual acuity after', 'Sehschärfe nachher',
    // The radius of the back surface is not that of the steeper meridian.
    'R (Fläche 2) vorher (mm)', 'K Fläche 1 nachher',
    '前表面', 'eye colour', 'induced astigmatism', 'مسطح', '', '12', 'incision',
  ])('%s is not taken for anything', (heading) => expect(columnOf(heading)).toBeNull());

  test.each([['K flat (D)', 'D'], ['K [dpt]', 'D'], ['K, diopters', 'D'], ['K mm', 'mm'], ['radius', 'mm'], ['曲率半径', 'mm'], ['K（毫米）', 'mm'], ['K', null], ['K D1', null],
    ['K (D) before', 'D'], ['K [ d ] pre', 'D'], ['平坦K（D）术前', 'D'], ['K dptr pre', 'D'], ['K dpt. vorher', 'D'], ['K dioptrías antes', 'D'], ['K (odd) pre', null], ['K (d2) pre', null], ['D before', null],
  ])('unit of %s', (heading, unit) =>
    expect(unitIn(heading)).toBe(unit));
});

describe('what a heading speaks of', () => {
  test.each(['axis (deg)', 'axis, degree', 'axis in degrees', 'axis °', 'Achse in Grad', 'eje en grados', 'axe, degré', 'axe en degrés', '轴位（度）', 'محور (درجة)'])('%s is in degrees', (text) => expect(inDegrees(text)).toBe(true));
  test.each(['axis', 'gradient', 'K (D)', 'degreeless', 'steep 度 K'])('%s is not said to be', (text) => expect(inDegrees(text)).toBe(false));

  test.each([['incision site', false], ['site of incision and site of arc', true], ['arc position, incision position', true], ['Ort des Bogens, Ort des Schnitts', true], ['切口位置、弧形切开位置', true], ['position', false]])('%s: two sites %s', (text, two) =>
    expect(ideasIn(text).has('sites')).toBe(two));

  test('the site of arcs beside that of an incision is asked about', () => {
    const { column, why } = readTable('position of the arc, site of the incision\tz\n1\t2', { delimiter: '\t' }).headings[0]!;
    expect([column, why?.id]).toEqual([null, 'severalThings']);
  });
});

describe('eyes', () => {
  test.each(['R', 'r', 'RE', 'OD', 'O.D.', 'o. d.', 'od', 'RA', 'Right', 'right eye', 'RIGHT (OD)', 'rechts', 'Rechtes Auge', 'rechte', 'derecho', 'derecha', 'Ojo derecho', 'D', 'droit', 'droite', 'œil droit', 'Œil Droit (OD)', 'يمين', 'أيمن', 'اليمنى', 'العين اليمنى', '右', '右眼', '右 眼', 'R (right)', 'D derecho', 'eye R', 'ojo D', 'right R'])('%s is right', (text) =>
    expect(eyeOf(text)).toBe('right'));

  test.each(['L', 'LE', 'OS', 'O.S.', 'OI', 'OG', 'LA', 'left', 'Left eye', 'links', 'linkes Auge', 'izquierdo', 'izq.', 'Ojo izquierdo', 'I', 'gauche', 'G', 'œil gauche', 'يسار', 'أيسر', 'اليسرى', 'العين اليسرى', '左', '左眼', 'L left', 'I – izquierdo', 'Auge L', 'œil G'])('%s is left', (text) =>
    expect(eyeOf(text)).toBe('left'));

  test.each(['', 'OU', 'both', 'R/L', 'right left', 'not right', '1', '0', 'x', 'eye', 'Auge', '双眼', '左右', 'RL', 'rightleft', 'right eyebrow', 'left redeye', 'right O.D.'])('%s is neither', (text) => expect(eyeOf(text)).toBeNull());

  // The article stands before a word; within it the same letters belong to another one: “high”, not “eye”.
  test.each(['عالين يمين', 'يمينال', 'يسالار'])('%s is neither', (text) => expect(eyeOf(text)).toBeNull());
});

describe('places', () => {
  // From the temporal side: 0 temporal, 90 superior, 180 nasal, 270 inferior.
  test.each([
    ['temporal', 0], ['Temporal', 0], ['schläfenseitig temporal', 0], ['صدغي', 0], ['颞侧', 0], ['superior', 90], ['oben', 90], ['haut', 90], ['arriba', 90], ['علوي', 90], ['上方', 90],
    ['nasal', 180], ['أنفي', 180], ['鼻侧', 180], ['inferior', 270], ['unten', 270], ['bas', 270], ['سفلي', 270], ['下方', 270],
    ['superotemporal', 45], ['supero-temporal', 45], ['oben temporal', 45], ['颞上', 45], ['superonasal', 135], ['inferonasal', 225], ['鼻下', 225], ['inferotemporal', 315], ['temporal unten', 315],
  ])('%s', (text, degrees) => expect(placeOf(text)).toBe(degrees));

  test.each(['', '180', '90°', 'temporal nasal', 'superior inferior', 'temporal superior nasal', 'steep axis', 'temple of doom', 'x'])('%s is none', (text) => expect(placeOf(text)).toBeNull());
});

describe('methods', () => {
  test.each([['blade', 'blade'], ['diamond knife', 'blade'], ['Messer', 'blade'], ['cuchillete', 'blade'], ['lame', 'blade'], ['مشرط', 'blade'], ['刀', 'blade'], ['laser', 'laser'], ['Femto', 'laser'], ['láser', 'laser'], ['ليزر', 'laser'], ['飞秒激光', 'laser'], ['blade and laser', null], ['', null], ['x', null]])('%s', (text, method) =>
    expect(methodOf(text)).toBe(method));
});
