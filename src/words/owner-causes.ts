import type { BoreFinding } from '../core/findings'
import type { SurfaceKind } from '../core/measured'
import type { OwnerEvidence } from './owner-evidence'
import { standsOut } from './owner-places'
import type { OwnerPart } from './owner-step'
import { ownerWords } from './owner-words'

/** No more than this many causes are told. */
const mostTold = 3

/** What may have caused the shape and the marks, as things to check, and how to slow the wear. */
export function causesStep({ finding, growth }: OwnerEvidence): OwnerPart {
  const said = ownerWords.causes
  const ofSurface = [...new Set(finding.surface.flatMap(({ kind }) => surfaceCauses[kind] ?? []))]
  const outlook = growth.outlook
  const causes = [
    ...ofSurface.map((name) => said[name]),
    ...(outlook?.known && outlook.rateChanged ? [said.rateChanged] : []),
    ...depthCauses(finding),
    ...(standsOut(finding.ovality[0]) ? [said.oval] : []),
  ].slice(0, mostTold)
  return {
    topic: 'causes',
    sentence: causes.length > 0 ? said.lead : said.none,
    beside: [...causes, ofSurface.includes('rust') ? said.slowRust : said.slow],
    look: { from: 'above', beside: false },
    rows: ['depth-form', 'ovality'],
  }
}

type SurfaceCause = 'rust' | 'scratch' | 'scuff' | 'flaking' | 'ridge'

const surfaceCauses: { readonly [Kind in SurfaceKind]?: SurfaceCause } = {
  rust: 'rust',
  pits: 'rust',
  scratch: 'scratch',
  scuff: 'scuff',
  'stuck-metal': 'scuff',
  flaking: 'flaking',
  'bare-aluminium': 'flaking',
  ridge: 'ridge',
}

/** The main form along the depth, and a step beside it. */
function depthCauses({ depthForm }: BoreFinding): string[] {
  const said = ownerWords.causes
  const names = depthForm?.names ?? []
  const has = (name: (typeof names)[number]) => names.includes(name)
  const top = (depthForm?.ends?.valueMm ?? 0) > 0
  const form = has('tapered')
    ? [top ? said.wideTop : said.wideBottom]
    : has('barrel')
      ? [said.barrel]
      : has('bell-mouthed')
        ? [said.bell]
        : has('waisted')
          ? [said.waisted]
          : []
  return [...form, ...(has('stepped') ? [said.stepped] : [])]
}
