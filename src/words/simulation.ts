import { type Simulation, worstOf } from '../core/simulation/simulate'
import { chances, placeText, plain, size } from './numbers'
import { words } from './words'

const grouped = new Intl.NumberFormat('en-GB')

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
  const apart = `${plain(apartMm * 1000, 1)} µm`
  const place = words.next.inBore(words.bar.boreNamed(station.boreName), placeText(station))
  const trials = countText(simulation.trials)
  const inside = station.inside
    ? [said.inside(chances(station.inside.linear), chances(station.inside.simulated))]
    : []
  if (apartMm <= station.toleranceMm) return [said.agrees(trials, apart, place), ...inside]
  const { lowMm, highMm } = station.simulated
  return [`${said.differs(trials, apart, place)} ${said.interval(size(lowMm), size(highMm))}.`, ...inside]
}
