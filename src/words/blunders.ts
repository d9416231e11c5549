import type { Blunder, Mend, Unseen } from '../core/findings'
import { degrees, depth, inMicrons, length, placeText, plusMinusMicrons, size } from './numbers'
import { oversizeText } from './oversize'
import { words } from './words'

/** A question about readings, in a sentence or two. */
export function blunderText(blunder: Blunder): string {
  const said = words.blunders
  switch (blunder.code) {
    case 'whole-turn': {
      const turns = said.turns(Math.abs(blunder.turns))
      return said.wholeTurn(placeText(blunder.place), turns, blunder.turns > 0)
    }
    case 'digits':
      return said.digits(placeText(blunder.place), size(blunder.readMm), size(blunder.likelierMm))
    case 'axes-swapped': {
      const [one, other] = blunder.axesDegrees
      return said.axesSwapped(depth(blunder.depthMm), degrees(one), degrees(other))
    }
    case 'levels-upside-down':
      return blunder.by === 'land' ? said.upsideDownLand : said.upsideDown
    case 'sign':
      return said.sign(size(blunder.readMm), size(blunder.knownMm))
    case 'setting':
      return settingText(blunder)
    case 'oversize-open':
      return said.oversize(oversizeText(blunder.nearestMm))
    case 'caliper-disagrees':
      return said.caliper(length(blunder.caliperMm, 2), length(blunder.readMm, 2))
    case 'repeats-spread':
      return said.spread(placeText(blunder.place), inMicrons(blunder.spreadMm), inMicrons(blunder.usualMm))
    case 'drift-with-order':
      return said.drift(inMicrons(blunder.overSurveyMm, { sign: true }), plusMinusMicrons(blunder.expandedMm))
  }
}

function settingText({ cause, by, byMm }: Blunder & { code: 'setting' }): string {
  const off = length(Math.abs(byMm), 3)
  const said = words.blunders
  if (by === 'caliper') return cause === 'sleeve' ? said.sleeveByCaliper(off) : said.turnByCaliper(off)
  return cause === 'sleeve' ? said.sleeve(off) : said.turn(off)
}

/** What a mend is called in the list of changes. */
export function mendName(mend: Mend): string {
  return words.blunders.changeNames[mend.kind]
}

/** What these readings could not have shown, in a sentence; undefined where there is nothing to say. */
export function unseenText(unseen: readonly Unseen[]): string | undefined {
  if (unseen.length === 0) return undefined
  return words.blunders.unseenSentence(unseen.map((slip) => words.blunders.unseen[slip]))
}
