import { Component, type ReactNode } from 'react'

interface PictureGuardProps {
  readonly onImpossible: () => void
  readonly children: ReactNode
}

/** Where the picture cannot be loaded or drawn, the page goes on without it. */
export class PictureGuard extends Component<PictureGuardProps, { readonly failed: boolean }> {
  override state = { failed: false }

  static getDerivedStateFromError() {
    return { failed: true }
  }

  override componentDidCatch() {
    this.props.onImpossible()
  }

  override render() {
    return this.state.failed ? null : this.props.children
  }
}
