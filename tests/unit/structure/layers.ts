import { type Import, importsOf } from './imports'
import type { SourceFile } from './source-files'

/** What each folder of src may import besides itself. */
export const allowedImports: Readonly<Record<string, readonly string[]>> = {
  core: [],
  formats: ['core'],
  job: ['core', 'formats'],
  storage: ['job', 'formats'],
  session: ['core'],
  words: ['core'],
  charts: ['core', 'words'],
  scene: ['core', 'words'],
  workers: ['core', 'formats'],
  pages: ['core', 'formats', 'job', 'session', 'words', 'charts'],
  cli: ['core', 'job', 'formats', 'words'],
  app: ['core', 'formats', 'job', 'storage', 'session', 'words', 'charts', 'scene', 'workers', 'pages'],
}

/** Folders that use no package but those at home in them. */
const withoutPackages: readonly string[] = ['core', 'formats']

/** Packages that belong to one folder: three is kept out of what the first number needs. */
const homeOfPackages: readonly (readonly [RegExp, string])[] = [
  [/^three(\/|$)/, 'scene'],
  [/^@react-three\//, 'scene'],
  [/^camera-controls$/, 'scene'],
  [/^node:/, 'cli'],
  // What a spreadsheet writes is taken apart by a library, in one place.
  [/^papaparse$/, 'formats'],
  // zod/mini does the same for a third of the bytes.
  [/^zod$/, 'nowhere'],
]

/** Each import that goes against the layers, as a sentence. */
export function layerProblems(files: readonly SourceFile[]): string[] {
  const paths = new Set(files.map(({ path }) => path))
  return files.flatMap((file) => {
    const layer = layerOf(file.path)
    if (!(layer in allowedImports)) return [`${file.path} is in no layer`]
    return importsOf(file, paths).flatMap((one) => problemOf(file.path, layer, one))
  })
}

function problemOf(path: string, layer: string, { target, isPackage }: Import): string[] {
  if (isPackage) {
    const home = homeOfPackages.find(([name]) => name.test(target))?.[1]
    const barred = home === undefined ? withoutPackages.includes(layer) : home !== layer
    return barred ? [`${path} imports the package ${target}`] : []
  }
  // The app opens the example from where every scenario lies.
  if (layer === 'app' && target.startsWith('scenarios/')) return []
  // The starter names the root's own folder, and tools read package.json.
  if (!target.startsWith('src/')) return layer === 'cli' ? [] : [`${path} reaches out of src to ${target}`]
  const other = layerOf(target)
  const allowed = other === layer || allowedImports[layer]?.includes(other)
  return allowed ? [] : [`${path} imports ${target}`]
}

function layerOf(path: string): string {
  return path.split('/')[1] ?? ''
}

/** Groups of files that import each other, directly or by way of others (Tarjan's components). */
export function importLoops(files: readonly SourceFile[]): string[][] {
  const paths = new Set(files.map(({ path }) => path))
  const reached = new Map(files.map((file) => [file.path, targetsIn(file, paths)]))
  const order = new Map<string, number>()
  const lowest = new Map<string, number>()
  const stack: string[] = []
  const loops: string[][] = []

  function visit(path: string): number {
    const own = order.size
    order.set(path, own)
    stack.push(path)
    let low = own
    for (const target of reached.get(path) ?? []) {
      if (!order.has(target)) low = Math.min(low, visit(target))
      else if (stack.includes(target)) low = Math.min(low, order.get(target) ?? own)
    }
    lowest.set(path, low)
    if (low === own) {
      const group = stack.splice(stack.indexOf(path))
      if (group.length > 1 || reached.get(path)?.includes(path)) loops.push(group)
    }
    return low
  }
  for (const { path } of files) if (!order.has(path)) visit(path)
  return loops
}

function targetsIn(file: SourceFile, paths: ReadonlySet<string>): string[] {
  return importsOf(file, paths).flatMap(({ target }) => (paths.has(target) ? [target] : []))
}
