import letters from '@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2?inline'
import picture from '../scene/bore-picture.css?inline'
import page from './hand-over.css?inline'

/** All that a page that is handed over looks like: its type is in it, since it loads none. */
export const handOverStyle = [
  `@font-face{font-family:"Source Sans 3 Variable";font-weight:200 900;src:url(${letters}) format("woff2")}`,
  picture,
  page,
].join('\n')
