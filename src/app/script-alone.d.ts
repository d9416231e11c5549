/** The text of a script that needs nothing else: see `vite.config.ts`. */
declare module '*?alone' {
  const text: string
  export default text
}
