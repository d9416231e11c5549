import type { BoreFinding, Findings } from '../core/findings'
import type { Measured } from '../core/measured'
import { pairingOf } from '../core/piston/pairing'
import { clearanceRows } from './clearance-rows'
import { engineRows } from './engine-rows'
import { ringGapRows } from './ring-gap-rows'
import type { Row } from './row'

/** Rows about pistons and rings: of each bore, and of the engine as a whole. */
export interface PistonRows {
  /** Clearances by the latest survey, ring gaps by the one given. */
  ofBore(finding: BoreFinding): Row[]
  readonly ofEngine: readonly Row[]
}

/** The rows about pistons and rings of a job; which piston goes where is worked out once for all of them. */
export function pistonRows(measured: Measured, findings: Findings): PistonRows {
  const pairing = pairingOf(measured, findings)
  return {
    ofBore: (finding) => [
      ...(findings.bores.includes(finding) ? clearanceRows(measured, finding, pairing) : []),
      ...ringGapRows(measured, finding),
    ],
    ofEngine: engineRows(measured, findings, pairing),
  }
}
