export const picture: Record<string, string> = {
  copy: '复制为图片',
  copied: '已复制。',
  notCopied: '此页面或浏览器不允许复制图片。',
  save: '存为图片，或拖到文档中',
};
