import { type Simulation, worstOf } from '../core/simulation/simulate'
import type { FigureName, Interval } from '../core/simulation/simulated-figures'
import { ruleText } from './notes'
import { chances, depth, inTenthsOfMicrons, placeText, size, sizeWithUnit, tenthsOfMicrons } from './numbers'
import { words } from './words'

const grouped = new Intl.NumberFormat(words.language.locale)

/** A whole number with its thousands apart. */
export function countText(count: number): string {
  return grouped.format(count)
}

/** Whether the simulated intervals are those of the linear figures, in sentences. */
export function simulationTexts(simulation: Simulation): readonly string[] {
  const worst = worstOf(simulation)
  if (!worst) return []
  const { station, apartMm } = worst
  const said = words.simulation
  const apart = inTenthsOfMicrons(apartMm)
  const place = words.next.inBore(words.bar.boreNamed(station.boreName), placeText(station))
  const trials = countText(simulation.trials)
  const inside = station.inside
    ? [said.inside(chances(station.inside.linear), chances(station.inside.simulated))]
    : []
  const figures = figureTexts(simulation)
  if (apartMm <= station.toleranceMm) return [said.agrees(trials, apart, place), ...figures, ...inside]
  const { lowMm, highMm } = station.simulated
  return [
    `${said.differs(trials, apart, place)} ${said.interval(size(lowMm), sizeWithUnit(highMm))}.`,
    ...figures,
    ...inside,
  ]
}

/** The figures made of several stations: those whose interval the draws do not bear out, else that they do. */
function figureTexts({ figures, stations }: Simulation): readonly string[] {
  const said = words.simulation
  if (figures.length === 0) return []
  const off = figures.filter(({ apartMm, toleranceMm }) => apartMm > toleranceMm)
  const boreNames = new Map(stations.map(({ boreId, boreName }) => [boreId, boreName]))
  if (off.length > 0) {
    return off.map((figure) =>
      said.figureDiffers(
        words.bar.boreNamed(figure.boreName),
        figureName(figure.name, boreNames),
        intervalText(figure.name, figure.stated),
        intervalText(figure.name, figure.simulated),
      ),
    )
  }
  const kinds = [...new Set(figures.map(({ name }) => said.kinds[name.kind]))]
  return [said.figuresAgree(words.app.and(kinds))]
}

function figureName(name: FigureName, boreNames: ReadonlyMap<string, string>): string {
  const { names } = words.simulation
  switch (name.kind) {
    case 'level-mean':
    case 'fitted-oval':
      return names[name.kind](depth(name.depthMm))
    case 'ovality':
    case 'taper':
      return names[name.kind](ruleText(name.rule))
    case 'mean-difference':
    case 'largest-difference':
      return names[name.kind](words.bar.boreNamed(boreNames.get(name.againstBoreId) ?? ''))
  }
}

/** A level mean is a size in mm, all else a difference in µm. */
function intervalText({ kind }: FigureName, { lowMm, highMm }: Interval): string {
  const { interval } = words.simulation
  if (kind === 'level-mean') return interval(size(lowMm), sizeWithUnit(highMm))
  return words.simulation.micronInterval(tenthsOfMicrons(lowMm), inTenthsOfMicrons(highMm))
}
