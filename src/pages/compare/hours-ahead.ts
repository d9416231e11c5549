import type { TimeAhead } from '../../job/time-ahead'

/** The hours run at a share of the way from the last survey to the end of what is ahead. */
export function hoursAhead({ fromHours, endHours }: TimeAhead, share: number): number {
  return fromHours + Math.min(1, Math.max(0, share)) * (endHours - fromHours)
}

/** The other way about. */
export function shareAhead({ fromHours, endHours }: TimeAhead, hours: number): number {
  return (hours - fromHours) / (endHours - fromHours)
}
