declare module 'virtual:custom-elements' {
  const manifest: object;
  export default manifest;
}
