export const picture: Record<string, string> = {
  copy: 'نسخ كصورة',
  copied: 'تم النسخ.',
  notCopied: 'هذه الصفحة أو هذا المتصفح لا يسمح بنسخ الصور.',
  save: 'احفظها كصورة، أو اسحبها إلى مستند',
};
