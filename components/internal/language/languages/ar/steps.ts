export const steps: Record<string, string> = {
  name: 'الخطوات',
  back: 'السابق',
  next: 'التالي',
  at: 'الخطوة {$step} من {$count}',
  refused: 'لا يمكن عرض هذه الخطوة:',
  noCase: 'لا شيء لعرضه بعد: يلزم astig-case بداخله أو حوله، أو معرّفه في “for”.',
  predict: 'توقّع أولًا: ما الذي سيبقى؟',
  plane: 'توقّعك على مستوى الزوايا المضاعفة',
  magnitude: 'المقدار',
  meridian: 'خط الزوال الأشد تحدبًا',
  show: 'اعرض النتيجة',
  verdict: 'توقّعت {$guess}؛ والتقدير {$result}. الفرق {$error}.',
};
