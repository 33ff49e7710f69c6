/** Files of the built-in library are bundled as text. */
declare module '*.plim' {
  const text: string;
  export default text;
}
