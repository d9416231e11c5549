import { describe, expect, it } from 'vitest'
import { importLoops, layerProblems } from './layers'
import { sourceFiles } from './source-files'

const sources = sourceFiles('src', /\.(ts|tsx|mjs)$/)

describe('layers', () => {
  it('are kept by every import of every source file', () => {
    expect(sources.length).toBeGreaterThan(0)
    expect(layerProblems(sources)).toEqual([])
  })

  it('hold no file that comes round to itself by its imports, types counted', () => {
    expect(importLoops(sources)).toEqual([])
  })
})

const made = (path: string, text: string) => ({ path, text })

describe('the check of layers', () => {
  it.each([
    ['a value', "import { jobStore } from '../job/job-store'"],
    ['a type', "import type { Job } from '../job/job-store'"],
    ['a type named in place', "export type A = import('../job/job-store').Job"],
    ['a re-export', "export { jobStore } from '../job/job-store'"],
    ['everything re-exported', "export * from '../job/job-store'"],
    ['an import at run time', "export const job = () => import('../job/job-store')"],
    ['a bare import', "import '../job/job-store'"],
    ['a worker', "export const at = new URL('../job/job-store.ts', import.meta.url)"],
  ])('finds core reaching for job by %s', (_, text) => {
    const files = [made('src/core/size.ts', text), made('src/job/job-store.ts', 'export const jobStore = 1')]
    expect(layerProblems(files)).toEqual(['src/core/size.ts imports src/job/job-store.ts'])
  })

  it('finds core using a package', () => {
    const text = "import { z } from 'zod'"
    expect(layerProblems([made('src/core/size.ts', text)])).toEqual([
      'src/core/size.ts imports the package zod',
    ])
  })

  it('finds the drawing library outside the scene', () => {
    const files = [
      made('src/pages/Bench.tsx', "import { Color } from 'three'"),
      made('src/scene/wall.ts', "import { Color } from 'three'"),
    ]
    expect(layerProblems(files)).toEqual(['src/pages/Bench.tsx imports the package three'])
  })

  it('finds a package in formats, but for the one that takes tables apart, and that one nowhere else', () => {
    const files = [
      made('src/formats/table-text.ts', "import { parse } from 'papaparse'"),
      made('src/formats/plain-text.ts', "import { wrap } from 'wrapping'"),
      made('src/job/read-job.ts', "import { parse } from 'papaparse'"),
    ]
    expect(layerProblems(files)).toEqual([
      'src/formats/plain-text.ts imports the package wrapping',
      'src/job/read-job.ts imports the package papaparse',
    ])
  })

  it('finds the whole of zod where zod/mini serves', () => {
    const files = [
      made('src/job/schema.ts', "import { z } from 'zod'"),
      made('src/job/check-job.ts', "import * as z from 'zod/mini'"),
    ]
    expect(layerProblems(files)).toEqual(['src/job/schema.ts imports the package zod'])
  })

  it('finds a file in a folder that is no layer, and one that leaves src', () => {
    const files = [
      made('src/extras/size.ts', ''),
      made('src/job/size.ts', "import record from '../../tests/proof/record'"),
    ]
    expect(layerProblems(files)).toEqual([
      'src/extras/size.ts is in no layer',
      'src/job/size.ts reaches out of src to tests/proof/record',
    ])
  })

  it('lets a page import its own folder and the layers below it', () => {
    const files = [
      made('src/pages/bench/Sheet.tsx', "import { Row } from './Row'\nimport type { A } from '../../core/a'"),
      made('src/pages/bench/Row.tsx', ''),
      made('src/core/a.ts', ''),
    ]
    expect(layerProblems(files)).toEqual([])
  })

  it('finds a loop of three files made by types alone', () => {
    const files = [
      made('src/core/a.ts', "import type { B } from './b'\nexport type A = B"),
      made('src/core/b.ts', "import type { C } from './c'\nexport type B = C"),
      made('src/core/c.ts', "import type { A } from './a'\nexport type C = A[]"),
      made('src/core/d.ts', "import type { A } from './a'\nexport type D = A"),
    ]
    expect(importLoops(files).map((loop) => loop.sort())).toEqual([
      ['src/core/a.ts', 'src/core/b.ts', 'src/core/c.ts'],
    ])
  })

  it('finds a file that imports itself', () => {
    const files = [made('src/core/a.ts', "import type { A } from './a'\nexport type B = A")]
    expect(importLoops(files)).toEqual([['src/core/a.ts']])
  })

  it('refuses a source that cannot be parsed', () => {
    expect(() => layerProblems([made('src/core/a.ts', 'import {')])).toThrow('src/core/a.ts cannot be parsed')
  })
})
