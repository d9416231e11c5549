import type { Clamping, Survey } from '../measured'

/** What was bolted to a bore on two occasions, where both are recorded and are not the same. */
export function clampingsApart(
  { clamping: one }: Pick<Survey, 'clamping'>,
  { clamping: other }: Pick<Survey, 'clamping'>,
): readonly [Clamping, Clamping] | undefined {
  return one === undefined || other === undefined || one === other ? undefined : [one, other]
}
