import type { Port } from '../core/measured'
import { isWithinPort, portWidthDegrees } from '../core/ports/port-at'
import type { CutOpening } from '../core/surface/cut-stretches'

const turn = 2 * Math.PI

/** Where ports open a section at a depth, rad in [0, 2π]: one that runs over 0° in two. */
export function openingsAround(ports: readonly Port[], depthMm: number): CutOpening[] {
  return ports
    .filter((port) => depthMm >= port.fromDepthMm && depthMm <= port.toDepthMm)
    .flatMap((port) => {
      const from = ((((port.fromDegrees % 360) + 360) % 360) * Math.PI) / 180
      const to = from + (portWidthDegrees(port) * Math.PI) / 180
      return to <= turn
        ? [{ from, to }]
        : [
            { from, to: turn },
            { from: 0, to: to - turn },
          ]
    })
}

/** A port that opens an axis along its depth, at one of the contacts. */
export interface OpenedAlong extends CutOpening {
  readonly name: string
}

/** Where ports open an axis, mm of depth: a contact there would stand in the port. */
export function openingsAlong(
  ports: readonly Port[],
  axisDegrees: number,
  contactDegrees: readonly number[],
): OpenedAlong[] {
  return ports
    .filter((port) =>
      contactDegrees.some((contact) => isWithinPort(port, port.fromDepthMm, axisDegrees + contact)),
    )
    .map(({ name, fromDepthMm, toDepthMm }) => ({ name, from: fromDepthMm, to: toDepthMm }))
    .sort((a, b) => a.from + a.to - b.from - b.to)
}
