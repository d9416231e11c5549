import { lazy, Suspense } from 'react'
import type { KeptSpecsProps } from '../pages/bench/kept-specs-slot'
import { firstNumbersPainted } from './first-marks'

const KeptSpecs = lazy(async () => {
  await firstNumbersPainted
  const { KeptSpecs } = await import('./KeptSpecs')
  return { default: KeptSpecs }
})

/** Kept limits, brought along once the figures stand on the page. */
export function KeptSpecsLater(props: KeptSpecsProps) {
  return (
    <Suspense fallback={null}>
      <KeptSpecs {...props} />
    </Suspense>
  )
}
