import { cleanedScan, type InspectedScan } from '../core/scan/inspected-scan'
import type { Passage } from './passage'
import { scanMarkWords } from './scan-mark-words'
import { cleanedLines, scanMarkLines } from './scan-marks'
import { scanName } from './scans'

/** What stands out in the scans, for people. */
export function scanPassages(scans: readonly InspectedScan[]): Passage[] {
  return scans.flatMap((one): Passage[] => {
    const { bore, scan, index, marks } = one
    const heading: Passage = {
      kind: 'heading',
      text: scanMarkWords.inScan(bore.name, scanName(scan, index)),
    }
    if (!marks) return [heading, { kind: 'paragraph', text: scanMarkWords.notLooked }]
    const isPlated = bore.wall?.kind === 'plated-aluminium'
    const cleaned = cleanedScan(one, scans)
    return [
      heading,
      { kind: 'list', items: scanMarkLines(marks.found, isPlated) },
      ...(cleaned
        ? [
            { kind: 'subheading' as const, text: scanMarkWords.cleaned.title },
            { kind: 'list' as const, items: cleanedLines(marks.found, cleaned.after, cleaned.compared) },
          ]
        : []),
    ]
  })
}
