declare module '*.css?inline' {
  /** The style sheet as text, with its imports in it. */
  const css: string;
  export default css;
}
