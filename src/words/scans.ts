import type { Scan } from '../core/measured'
import { words } from './words'

/** What a scan is called; one without a name by its number, from 1. */
export function scanName({ name }: Pick<Scan, 'name'>, index: number): string {
  return name ?? words.scans.unnamed(String(index + 1))
}
