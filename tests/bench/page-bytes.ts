import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import type { Figure } from './figures'

/** The whole built page, packed. */
export function wholePage(outDir: string): Figure {
  const files = readdirSync(outDir, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
    .map((entry) => join(entry.parentPath, entry.name))
  return { name: 'whole page, packed', value: kilobytes(packedBytes(files)), target: '400 kB' }
}

/** Those files of the built page, by their addresses, packed. */
export function loadedFiles(outDir: string, addresses: readonly string[]): string {
  const files = addresses.map((address) => {
    const { pathname } = new URL(address)
    return join(outDir, pathname === '/' ? 'index.html' : decodeURIComponent(pathname))
  })
  return `${kilobytes(packedBytes(files))} in ${files.length} files`
}

function packedBytes(files: readonly string[]): number {
  return files.reduce((sum, file) => sum + gzipSync(readFileSync(file), { level: 9 }).length, 0)
}

function kilobytes(bytes: number): string {
  return `${(bytes / 1000).toFixed(1)} kB`
}
