import { isReadDirectly } from '../gauge/presets'
import type { Entry, Gauge, GaugeKind, SetUp, StandardKind } from '../measured'

/** Whether readings of this entry are sizes in mm; else they are dial readings in µm. */
export function isOfSizes(entry: Entry): boolean {
  return entry === 'size' || entry === 'direct'
}

/**
 * The entry that a set-up's readings are computed by. A size of an internal instrument was read off its own
 * scale or off a micrometer, also where it is only said to be a size.
 */
export function entryOf(setUp: Pick<SetUp, 'entry'>, gauge: Pick<Gauge, 'kind'>): Entry {
  return setUp.entry === 'size' && isReadDirectly(gauge.kind) ? 'direct' : setUp.entry
}

/** The ways of writing readings down that a kind of gauge allows, the usual one first. */
export function entriesOf(kind: GaugeKind): readonly Entry[] {
  if (isReadDirectly(kind)) return kind === 'three-contact-micrometer' ? ['direct', 'deviation'] : ['direct']
  return kind.startsWith('dial') ? ['size', 'deviation', 'reverse'] : ['size', 'deviation']
}

/**
 * Whether readings can come about this way: an internal instrument alone is read directly; the reverse method
 * takes a gauge with two contacts and a dial, and a micrometer to measure over them.
 */
export function entryFits(entry: Entry, gauge: GaugeKind, standard: StandardKind): boolean {
  if (entry === 'direct') return isReadDirectly(gauge)
  return entry !== 'reverse' || (gauge.startsWith('dial') && standard === 'micrometer')
}

/** Roughly the size of the bores a set-up is for, mm: good to turn a width around the wall into an angle. */
export function roughSizeMm({ entry, settingSizeMm, overContactsMm }: SetUp): number {
  return entry === 'reverse' ? (overContactsMm ?? settingSizeMm) : settingSizeMm
}
