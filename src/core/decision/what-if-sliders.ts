import type { Place } from '../findings'
import { place } from '../form/range-finding'
import type { Evidence } from './evidence'
import type { WhatIf } from './what-if'

/** What can be tried out. */
export const sliderNames = ['hours', 'temperature', 'limit', 'piston', 'reading'] as const
export type SliderName = (typeof sliderNames)[number]

/** Something that can be tried out, in steps from one end to the other, in the unit of its value. */
export interface Slider {
  readonly name: SliderName
  /** As it is. */
  readonly value: number
  readonly from: number
  readonly to: number
  readonly step: number
  /** The station that a reading is of. */
  readonly place?: Place
}

/** Sizes are tried out in steps of a micron. */
const micronMm = 0.001
/** How far past what is between a size and its limit, mm. */
const beyondMm = 0.03
const temperatureReachK = 15

/**
 * What can be tried out for a bore: hours while there is an outlook, the temperature of the bore, its largest size,
 * the piston at hand, and the reading at a station, by default the one that decides its size.
 */
export function slidersOf(evidence: Evidence, at?: Place): Slider[] {
  return [
    ...hoursSlider(evidence),
    ...temperatureSlider(evidence),
    ...limitSlider(evidence),
    ...pistonSlider(evidence),
    ...readingSlider(evidence, at),
  ]
}

/** Where a slider stands, as a change to try out. */
export function whatIfOf(slider: Slider, value: number): WhatIf {
  switch (slider.name) {
    case 'hours':
      return { hours: value }
    case 'temperature':
      return { boreTemperatureC: value }
    case 'limit':
      return { limitMm: value }
    case 'piston':
      return { pistonMm: value }
    case 'reading':
      return slider.place ? { reading: { ...slider.place, diameterMm: value } } : {}
  }
}

function hoursSlider({ growth: { outlook } }: Evidence): Slider[] {
  if (!outlook?.known || outlook.now || outlook.earliestHours === undefined) return []
  const { lastHours, earliestHours, latestHours = earliestHours } = outlook
  const reach = Math.max(earliestHours, latestHours) - lastHours
  const step = stepFor(reach)
  return [{ name: 'hours', value: 0, from: 0, to: Math.ceil((reach * 1.25) / step) * step, step }]
}

/** 1, 2 or 5 × 10ⁿ, some two hundred to the whole; hours are whole. */
function stepFor(reach: number): number {
  const rough = Math.max(1, reach / 200)
  const power = 10 ** Math.floor(Math.log10(rough))
  const factor = [1, 2, 5].find((one) => one * power >= rough) ?? 10
  return factor * power
}

function temperatureSlider({ setUp: { boreTemperatureC } }: Evidence): Slider[] {
  if (boreTemperatureC === undefined) return []
  return [
    {
      name: 'temperature',
      value: boreTemperatureC,
      from: Math.max(-30, boreTemperatureC - temperatureReachK),
      to: boreTemperatureC + temperatureReachK,
      step: 0.5,
    },
  ]
}

function limitSlider({ finding }: Evidence): Slider[] {
  const maxMm = finding.pair?.maxMm
  const sizes = finding.stations.filter((s) => s.counted).map((s) => s.diameterMm)
  if (maxMm === undefined || sizes.length === 0) return []
  const reach = Math.abs(maxMm - Math.max(...sizes)) + beyondMm
  return [{ name: 'limit', value: maxMm, ...aroundInMicrons(maxMm, reach) }]
}

function pistonSlider({ pistons: { atHand }, measured }: Evidence): Slider[] {
  const piston = measured.pistons?.find(({ id }) => id === atHand?.pistonId)
  if (!piston || atHand?.verdict === undefined || !atHand.least || !atHand.most) return []
  const { readMm, minMm, maxMm } = piston
  const value = readMm ?? (minMm === undefined || maxMm === undefined ? undefined : (minMm + maxMm) / 2)
  if (value === undefined) return []
  const { minMm: least = atHand.least.valueMm, maxMm: most = atHand.most.valueMm } = atHand.window ?? {}
  const off = [atHand.least.valueMm - least, atHand.most.valueMm - most].map(Math.abs)
  return [{ name: 'piston', value, ...aroundInMicrons(value, Math.max(...off) + beyondMm) }]
}

function readingSlider({ finding }: Evidence, at: Place | undefined): Slider[] {
  const { verdict, largest, pair, stations } = finding
  const wanted = at ?? (verdict.known ? verdict.deciding : largest)
  const station = stations.find(
    (s) => s.counted && s.depthMm === wanted?.depthMm && s.axisDegrees === wanted.axisDegrees,
  )
  if (!station) return []
  const value = Math.round(station.diameterMm / micronMm) * micronMm
  const reach = (pair?.maxMm === undefined ? 0 : Math.abs(pair.maxMm - value)) + beyondMm
  return [{ name: 'reading', value, ...aroundInMicrons(value, reach), place: place(station) }]
}

/** From so much below to so much above, counted in whole microns from the value. */
function aroundInMicrons(value: number, reachMm: number): Pick<Slider, 'from' | 'to' | 'step'> {
  const reach = Math.ceil(reachMm / micronMm) * micronMm
  return { from: value - reach, to: value + reach, step: micronMm }
}
