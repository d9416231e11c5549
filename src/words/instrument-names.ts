import type { Gauge, Measured, SetUp, Standard, Thermometer } from '../core/measured'
import { words } from './words'

type Lists = Pick<Measured, 'gauges' | 'standards' | 'thermometers' | 'setUps'>

/** What a gauge is called: its name, else its kind, with a number where several are alike. */
export function gaugeName(gauge: Gauge, { gauges }: Lists): string {
  return nameAmong(gauge, gauges, ({ kind }) => words.setUp.gauges[kind])
}

/** What a ring or a micrometer is called: its name, else its kind, with a number where several are alike. */
export function standardName(standard: Standard, { standards }: Lists): string {
  return nameAmong(standard, standards, ({ kind }) => words.setUp.standards[kind])
}

export function thermometerName(thermometer: Thermometer, { thermometers }: Lists): string {
  return nameAmong(thermometer, thermometers, () => words.instruments.unnamedThermometer)
}

export function setUpName(setUp: SetUp, { setUps }: Lists): string {
  return nameAmong(setUp, setUps, () => words.instruments.unnamedSetUp)
}

interface Named {
  readonly id: string
  readonly name?: string
}

function nameAmong<Item extends Named>(
  item: Item,
  all: readonly Item[],
  kindOf: (item: Item) => string,
): string {
  const own = item.name?.trim()
  if (own) return own
  const kind = kindOf(item)
  const alike = all.filter((each) => !each.name?.trim() && kindOf(each) === kind)
  return alike.length < 2 ? kind : words.instruments.numbered(kind, alike.indexOf(item) + 1)
}
