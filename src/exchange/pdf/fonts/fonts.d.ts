/** A font file as a data address, so that it travels with the code that uses it. */
declare module '*.ttf?inline' {
  const address: string;
  export default address;
}
