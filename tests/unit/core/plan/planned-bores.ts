import fc from 'fast-check'
import { gaugeKinds } from '../../../../src/core/measured'

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })

function openings(lengthMm: number) {
  return {
    ports: fc.array(
      fc
        .tuple(number(0, lengthMm), number(0.5, lengthMm / 2), number(-360, 360), number(1, 200))
        .map(([fromDepthMm, heightMm, fromDegrees, width]) => ({
          id: `${fromDepthMm} ${fromDegrees}`,
          name: `port at ${fromDegrees}`,
          fromDepthMm,
          toDepthMm: fromDepthMm + heightMm,
          fromDegrees,
          toDegrees: fromDegrees + width,
        })),
      { maxLength: 8 },
    ),
    belts: fc.array(
      fc.tuple(number(0, lengthMm), number(0, lengthMm / 8)).map(([fromDepthMm, heightMm]) => ({
        id: `${fromDepthMm}`,
        name: `belt at ${fromDepthMm}`,
        fromDepthMm,
        toDepthMm: fromDepthMm + heightMm,
      })),
      { maxLength: 2 },
    ),
    ringTravelMm: fc.option(
      fc
        .tuple(number(0, lengthMm), number(0, lengthMm))
        .map(([one, other]) => ({ from: Math.min(one, other), to: Math.max(one, other) })),
    ),
  }
}

/** Bores with any ports, belts and ring travel, even such as nobody would make. */
export const plannedBores = fc.tuple(number(8, 400), number(30, 200)).chain(([lengthMm, diameterMm]) =>
  fc.record(openings(lengthMm)).map(({ ringTravelMm, ...rest }) => ({
    lengthMm,
    diameterMm,
    ...rest,
    ...(ringTravelMm ? { ringTravelMm } : {}),
  })),
)

/** Gauges of any kind that stands across the bore, with and without feet. */
export const plannedGauges = fc
  .record({
    kind: fc.constantFrom(...gaugeKinds.filter((kind) => kind !== 'radial-probe')),
    contactHalfWidthMm: fc.option(number(0.5, 6)),
    feetOffsetMm: fc.option(number(3, 40)),
  })
  .map(({ kind, contactHalfWidthMm, feetOffsetMm }) => ({
    kind,
    ...(contactHalfWidthMm === null ? {} : { contactHalfWidthMm }),
    ...(feetOffsetMm === null ? {} : { feetOffsetMm }),
  }))
