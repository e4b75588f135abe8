/** What is said about the map of the power, in Chinese. */
export const map: Record<string, string> = {
  name: '屈光力分布图',
  heading: '{$power}，{$state}',
  axial: '角膜轴向屈光力',
  tangential: '角膜切向屈光力',
  before: '术前',
  after: '术后（预期）',
  difference: '手术带来的变化（术后减术前）',
  reading: '{$direction} 方向、距中心 {$distance} 处为 {$power}',
  ask: '请指向角膜，或选择一个位置：',
  direction: '方向',
  distance: '距中心的距离',
  shape: '由角膜曲率计读数计算得出，并非逐点测量：假定角膜像平均角膜那样向角膜缘逐渐变平。',
  illustration: '示意：切口和弧形切口附近局部变平的范围是假定的。',
};
