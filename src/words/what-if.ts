import type { Evidence } from '../core/decision/evidence'
import type { Tip, Tipping } from '../core/decision/tipping'
import type { Slider } from '../core/decision/what-if-sliders'
import { decisionWords } from './decision-words'
import { inMicrons, placeText, plain, sizeWithUnit, temperature } from './numbers'
import { whatIfWords } from './what-if-words'

/** What a slider is about, with the station of a reading. */
export function sliderLabel(slider: Slider): string {
  const said = whatIfWords.labels
  return slider.place ? said.reading(placeText(slider.place)) : said.plain[slider.name]
}

/** Where a slider stands, in its unit. */
export function sliderText(slider: Slider, value: number, evidence: Evidence): string {
  const said = whatIfWords
  switch (slider.name) {
    case 'hours': {
      const { outlook } = evidence.growth
      const last = outlook?.known ? outlook.lastHours : 0
      return said.hoursOn(plain(value, 0), plain(last + value, 0))
    }
    case 'temperature':
      return temperature(value)
    case 'limit':
    case 'piston':
    case 'reading':
      return sizeWithUnit(value)
  }
}

/** How near the decision is to tipping over as a slider moves, in its unit; what to say while that is looked for. */
export function tippingText(
  slider: Slider,
  at: number,
  tipping: Tipping | undefined,
  evidence: Evidence,
): string {
  const said = whatIfWords
  if (!tipping) return said.looking
  const tips = [tipping.below, tipping.above].filter((tip) => tip !== undefined)
  if (tips.length === 0) {
    return said.never(sliderText(slider, slider.from, evidence), sliderText(slider, slider.to, evidence))
  }
  return tips
    .sort((a, b) => Math.abs(a.value - at) - Math.abs(b.value - at))
    .map((tip) =>
      said.tips(sliderText(slider, tip.value, evidence), offText(slider, at, tip), outcomeText(tip)),
    )
    .join(' ')
}

function offText({ name }: Slider, at: number, { value }: Tip): string {
  const said = whatIfWords.off
  const by = Math.abs(value - at)
  if (name === 'hours') return value > at ? said.later(plain(by, 0)) : said.sooner(plain(by, 0))
  if (name === 'temperature') return value > at ? said.warmer(plain(by, 1)) : said.colder(plain(by, 1))
  return value > at ? said.more(inMicrons(by)) : said.less(inMicrons(by))
}

function outcomeText({ outcome }: Tip): string {
  return outcome === 'undecided' ? whatIfWords.undecided : decisionWords.short[outcome]
}
