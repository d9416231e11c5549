import { describe, expect, it } from 'vitest'
import { undocumentedExports } from './documented-exports'
import { sourceFiles } from './source-files'

/** Plain data under one comment at the file's head. */
const plainData = new Set(['src/core/measured.ts', 'src/core/findings.ts', 'src/core/problem.ts'])

const core = sourceFiles('src/core', /\.ts$/)

describe('the core', () => {
  it('says above every exported function, class and constant what it is', () => {
    expect(core.length).toBeGreaterThan(0)
    expect(core.filter(({ path }) => !plainData.has(path)).flatMap(undocumentedExports)).toEqual([])
  })

  it('says at the head of its files of plain data what they hold', () => {
    const data = core.filter(({ path }) => plainData.has(path))
    expect(data).toHaveLength(plainData.size)
    for (const { text } of data) expect(text).toMatch(/^\/\*\*/)
  })
})

describe('the check of comments', () => {
  const check = (text: string) => undocumentedExports({ path: 'a.ts', text })

  it.each([
    ['a function', 'export function f(): void {}'],
    ['an arrow function', 'export const f = () => 1'],
    ['a class', 'export class f {}'],
    ['a line comment', '// Not for readers of the interface.\nexport const f = 1'],
    ['an empty comment', '/** */\nexport const f = 1'],
    ['a comment that belongs to what stands between', '/** About g. */\nconst g = 1\nexport const f = g'],
    ['a list', '/** About f. */\nconst f = 1\nexport { f }'],
  ])('finds %s without a comment of its own', (_, text) => {
    expect(check(text)).toEqual(['a.ts: f'])
  })

  it('finds a default export without one', () => {
    expect(check('export default 1')).toEqual(['a.ts: default'])
  })

  it('is content with a comment right above, and asks none of types and re-exports', () => {
    const text = [
      '/** What f is. */',
      'export function f(): void {}',
      'export interface A { b: number }',
      'export type C = A',
      "export { g } from './g'",
      'export type { C as D }',
    ]
    expect(check(text.join('\n'))).toEqual([])
  })
})
