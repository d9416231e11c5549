/** The inputs of a diameter measured with a gauge that was set to a known size. */
export interface SetGaugeReading {
  /** Setting size as the standard shows it, mm. */
  readonly settingMm: number
  /** What the standard reads on its own standard less the certified size, mm. */
  readonly standardErrorMm: number
  /** Expansion of the standard and of the bore's wall, 1/K. */
  readonly standardPerK: number
  readonly wallPerK: number
  /** Temperature of the standard and of the bore, °C. */
  readonly referenceC: number
  readonly boreC: number
  /** Reading less zero, positive for a larger bore, mm. */
  readonly deviationMm: number
}

/**
 * Diameter at 20 °C from a deviation, mm:
 * D20 = [(S − e)·(1 + α_r·(T_r − 20)) + (x − z₀)] / (1 + α_b·(T_b − 20)).
 *
 * Own derivation: at the temperatures of measuring the standard is (S − e)·(1 + α_r·(T_r − 20)) long, the
 * gauge adds its deviation, and the sum is the bore's length at T_b, brought back to 20 °C, the reference
 * temperature of ISO 1:2022. Exact within the linear law of expansion. A size R read directly off an inside
 * micrometer is the case S = R with no deviation.
 */
export function diameterAt20(reading: SetGaugeReading): number {
  const standard =
    (reading.settingMm - reading.standardErrorMm) * (1 + reading.standardPerK * (reading.referenceC - 20))
  return (standard + reading.deviationMm) / (1 + reading.wallPerK * (reading.boreC - 20))
}

/**
 * Deviations of a survey's readings from the setting, mm, positive for a larger bore: `dialUm` counted
 * positive clockwise from the dial's own zero, `zeroUm` what the dial showed on the standard.
 */
export function deviationFromDial(
  dialUm: number,
  zeroUm: number,
  largerIs: 'clockwise' | 'anticlockwise',
): number {
  const sign = largerIs === 'clockwise' ? 1 : -1
  return (sign * (dialUm - zeroUm)) / 1000
}
