/** Where a measuring run finds the project, the built page and a browser, and where its pictures go. */
export interface Setting {
  readonly root: string
  readonly outDir: string
  readonly chromium: string
  readonly output: string
}
