import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../../..', import.meta.url))

/** What a build or a test run leaves behind, and the packages. */
const leftBehind = new Set(['.git', 'node_modules', 'dist', '.cache', 'output'])

export interface SourceFile {
  /** From the root, with forward slashes. */
  readonly path: string
  readonly text: string
}

/** The files below a folder, with their text, whether or not they are kept in version control yet. */
export function sourceFiles(folder: string, name: RegExp): SourceFile[] {
  return walk(folder)
    .filter((path) => name.test(path))
    .map((path) => ({ path, text: readFileSync(join(root, path), 'utf8') }))
}

/** The paths of every file kept in version control; of every file there is, in an unpacked copy without it. */
export function keptPaths(): string[] {
  const listed = spawnSync('git', ['ls-files', '-z'], { cwd: root, encoding: 'utf8' })
  const kept = listed.status === 0 ? listed.stdout.split('\0').filter((path) => path !== '') : []
  return kept.length > 0 ? kept.filter((path) => existsSync(join(root, path))) : walk('')
}

/** The text of a file, or undefined where it is a picture or another file of bytes. */
export function textOf(path: string): string | undefined {
  const bytes = readFileSync(join(root, path))
  return bytes.includes(0) ? undefined : bytes.toString('utf8')
}

function walk(folder: string): string[] {
  const entries = readdirSync(join(root, folder), { withFileTypes: true })
  return entries
    .filter((entry) => !leftBehind.has(entry.name))
    .flatMap((entry) => {
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`
      return entry.isDirectory() ? walk(path) : [path]
    })
}
