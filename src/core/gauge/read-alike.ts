import type { GaugeKind } from '../measured'

/** Two contacts read a diameter, three the mean of a level: one is not to be taken from the other. */
export function readAlike(a: GaugeKind, b: GaugeKind): boolean {
  return (a === 'three-contact-micrometer') === (b === 'three-contact-micrometer')
}
