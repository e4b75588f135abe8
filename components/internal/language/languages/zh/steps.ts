export const steps: Record<string, string> = {
  name: '步骤',
  back: '上一步',
  next: '下一步',
  at: '第 {$step} 步，共 {$count} 步',
  refused: '无法显示这一步：',
  noCase: '暂无内容：需要在其内部或外部有 astig-case，或在“for”中写明其 id。',
  predict: '先预测：还会剩下多少？',
  plane: '您的预期（倍角平面）',
  magnitude: '大小',
  meridian: '陡子午线',
  show: '显示结果',
  verdict: '您的预期为 {$guess}；估计值为 {$result}。相差 {$error}。',
};
