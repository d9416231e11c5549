import type { GaugeKind } from '../measured'

const twoContacts: readonly number[] = [0, 180]
const threeContacts: readonly number[] = [0, 120, 240]

/**
 * Where a gauge of this kind touches the wall, degrees clockwise from the axis its reading is written under:
 * three contacts 120° apart for a three-contact micrometer, else both ends of the axis.
 */
export function contactAngles(kind: GaugeKind | undefined): readonly number[] {
  return kind === 'three-contact-micrometer' ? threeContacts : twoContacts
}
