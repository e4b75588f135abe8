/** What is said about the map of the power, in Arabic. */
export const map: Record<string, string> = {
  name: 'خريطة القوة',
  heading: '{$power}، {$state}',
  axial: 'القوة المحورية للقرنية',
  tangential: 'القوة المماسية للقرنية',
  before: 'قبل العملية',
  after: 'بعد العملية، كما هو متوقع',
  difference: 'ما تغيّره العملية (بعد ناقص قبل)',
  reading: '{$power} عند {$direction}، على بعد {$distance} من المركز',
  ask: 'أشيروا إلى القرنية أو اختاروا موضعًا:',
  direction: 'الاتجاه',
  distance: 'البعد عن المركز',
  shape: 'محسوبة من قياس القرنية وليست مقيسة نقطة بنقطة: قرنية تتسطح نحو الحوف كما تتسطح قرنية متوسطة.',
  illustration: 'رسم توضيحي: مدى التسطح الموضعي قرب الشق والأقواس مفترض.',
};
