import { describe, expect, it } from 'vitest'
import { stepReadUm, typicalTurnUm } from '../../../../src/core/gauge/presets'

describe('a gauge that is marked in inches', () => {
  it('is read to the next larger step of such gauges where none is recorded', () => {
    expect(stepReadUm({ kind: 'dial-0.001-ring' })).toBe(1)
    expect(stepReadUm({ kind: 'dial-0.001-ring', markedIn: 'inch' })).toBe(1.27)
    expect(stepReadUm({ kind: 'dial-0.01', markedIn: 'inch' })).toBe(2.54)
    expect(stepReadUm({ kind: 'dial-0.01-simple', markedIn: 'inch' })).toBe(5.08)
    expect(stepReadUm({ kind: 'internal-micrometer-rods', markedIn: 'inch' })).toBe(12.7)
    expect(stepReadUm({ kind: 'dial-0.01', markedIn: 'inch', stepUm: 1 })).toBe(1)
  })

  it('has a needle that turns once in 0.010 or 0.100 in (common practice, no published source)', () => {
    expect(typicalTurnUm({ kind: 'dial-0.001-micrometer', markedIn: 'inch' })).toBe(254)
    expect(typicalTurnUm({ kind: 'dial-0.01', markedIn: 'inch' })).toBe(2540)
    expect(typicalTurnUm({ kind: 'dial-0.001-ring' })).toBe(200)
    expect(typicalTurnUm({ kind: 'dial-0.01-simple' })).toBe(1000)
    expect(typicalTurnUm({ kind: 'telescoping', markedIn: 'inch' })).toBeUndefined()
  })
})
