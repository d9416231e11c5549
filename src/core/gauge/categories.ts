/**
 * Number of distinct categories: how many sizes of such parts the gauge with these people tells apart, 1.41·PV/GRR
 * cut to a whole number. A scatter counts as no less than what the step hides, step/√12. Source: Measurement
 * Systems Analysis, 4th ed. 2010, chapter II, section D; 1.41 is √2 as printed there.
 */
export function categoriesOf(partsUm: number, gaugeAndPeopleUm: number, stepUm: number): number {
  return Math.floor((1.41 * partsUm) / Math.max(gaugeAndPeopleUm, stepUm / Math.sqrt(12)))
}
