import { type RootState, useThree } from '@react-three/fiber'
import { Component, type ReactNode, useEffect } from 'react'
import { BoreScene, type BoreSceneProps } from './BoreScene'

interface StillSceneProps extends BoreSceneProps {
  /** Everything is in its place: a frame can be drawn. */
  readonly onReady: (state: RootState) => void
  readonly onFailed: (error: unknown) => void
}

/** A bore to be drawn once. */
export function StillScene({ onReady, onFailed, ...bore }: StillSceneProps) {
  return (
    <FailureGuard onFailed={onFailed}>
      <BoreScene {...bore} />
      <Ready onReady={onReady} />
    </FailureGuard>
  )
}

/** Stands behind the bore, so that its effects run after those of the bore. */
function Ready({ onReady }: Pick<StillSceneProps, 'onReady'>) {
  const get = useThree((state) => state.get)
  useEffect(() => onReady(get()), [onReady, get])
  return null
}

class FailureGuard extends Component<{
  readonly onFailed: (error: unknown) => void
  readonly children: ReactNode
}> {
  override state = { failed: false }

  static getDerivedStateFromError() {
    return { failed: true }
  }

  override componentDidCatch(error: unknown) {
    this.props.onFailed(error)
  }

  override render() {
    return this.state.failed ? null : this.props.children
  }
}
