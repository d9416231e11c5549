import type { Piston, Standard, Wall, WallKind } from '../measured'

/** A coefficient of linear expansion with its standard uncertainty, 1/K. */
export interface Expansion {
  readonly perK: number
  readonly doubtPerK: number
  readonly assumed: boolean
}

/**
 * Typical coefficients of walls, 1/K between room temperature and 100 °C. Handbook tables give grey iron
 * 10.8 to 11.4, steel 11.3 to 12.3, cast aluminium-silicon 18 to 22, wrought aluminium 23.6 (each per
 * million); a plated cylinder is taken at the upper end of the aluminium range, iron at its lower.
 */
const typical: Readonly<Record<WallKind, number>> = {
  'plated-aluminium': 23e-6,
  'aluminium-silicon': 19e-6,
  'grey-iron': 10.5e-6,
  steel: 11.5e-6,
}

/**
 * Expansion of a bore's wall. Doubt where none is given: 10 % as a rectangular half-width. A wall of
 * unknown kind may be anything from iron to aluminium: rectangular from 10.5 to 23 per million and kelvin.
 */
export function wallExpansion(wall: Wall | undefined): Expansion {
  if (!wall) {
    const iron = typical['grey-iron']
    const aluminium = typical['plated-aluminium']
    return {
      perK: (iron + aluminium) / 2,
      doubtPerK: (aluminium - iron) / 2 / Math.sqrt(3),
      assumed: true,
    }
  }
  const perK = wall.expansionPerK ?? typical[wall.kind]
  return { perK, doubtPerK: wall.expansionDoubtPerK ?? (0.1 * perK) / Math.sqrt(3), assumed: false }
}

/**
 * Expansion of a setting standard: 11.5 per million and kelvin for gauge steel, rectangular ± 1 per
 * million, where the standard does not say. Source of 11.5: GUM (JCGM 100:2008) H.1.
 */
export function standardExpansion(standard: Standard): Expansion {
  return {
    perK: standard.expansionPerK ?? 11.5e-6,
    doubtPerK: standard.expansionDoubtPerK ?? 1e-6 / Math.sqrt(3),
    assumed: false,
  }
}

/** Typical piston, 1/K: cast aluminium-silicon alloys stand at 18.0 to 22.0 per million in handbook tables. */
const typicalPistonPerK = 20e-6

/** Expansion of a piston, 1/K. Doubt where none is given: 10 % as a rectangular half-width. */
export function pistonExpansion({ expansionPerK, expansionDoubtPerK }: Piston): Expansion {
  const perK = expansionPerK ?? typicalPistonPerK
  return { perK, doubtPerK: expansionDoubtPerK ?? (0.1 * perK) / Math.sqrt(3), assumed: false }
}
