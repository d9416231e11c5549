import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

const folder = fileURLToPath(new URL('./output/', import.meta.url))

export interface Figures {
  readonly [name: string]: string | number
}

/**
 * Keeps the figures that a proof test found, for the results page. The name becomes the heading there; a
 * second report under one name replaces the first.
 */
export function report(name: string, figures: Figures, seed?: number): void {
  mkdirSync(folder, { recursive: true })
  const file = name.toLowerCase().replace(/[^a-z0-9]+/g, '-')
  writeFileSync(`${folder}${file}.json`, JSON.stringify({ name, seed, figures }))
}
