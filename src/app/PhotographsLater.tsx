import { lazy, Suspense } from 'react'
import type { PhotographsProps } from '../pages/bench/photographs-slot'

const Photographs = lazy(async () => ({ default: (await import('./Photographs')).Photographs }))

/** Photographs, brought along by the page only where a finding is opened. */
export function PhotographsLater(props: PhotographsProps) {
  return (
    <Suspense fallback={<div className="photographs-later" />}>
      <Photographs {...props} />
    </Suspense>
  )
}
