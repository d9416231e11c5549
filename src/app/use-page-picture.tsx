import { type ReactNode, useCallback, useState } from 'react'
import { useStore } from 'zustand'
import type { LimitPair } from '../core/findings'
import type { WallGrid } from '../core/surface/wall-grid'
import { wallPaint } from '../scene/wall-palette'
import { PictureStand, type Trouble } from './PictureSlot'
import { type Theme, themeStore } from './theme'

/** What a picture on a page of its own is told beside what it shows. */
export interface PicturePlace {
  readonly theme: Theme
  readonly onTrouble: (trouble: Trouble) => void
}

/** The picture of a page that shows walls beside each other, undefined where none can be drawn, and their paint. */
export function usePagePicture<Shown extends object>(Picture: (props: Shown & PicturePlace) => ReactNode) {
  const theme = useStore(themeStore, (state) => state.theme)
  const [impossible, setImpossible] = useState(false)
  const onImpossible = useCallback(() => setImpossible(true), [])
  const picture = useCallback(
    (shown: Shown, box: { width: number; height: number }): ReactNode => (
      <PictureStand box={box} onImpossible={onImpossible}>
        {(onTrouble) => <Picture {...shown} theme={theme} onTrouble={onTrouble} />}
      </PictureStand>
    ),
    [Picture, theme, onImpossible],
  )
  const paintOf = useCallback(
    (grid: WallGrid, pair: LimitPair | undefined) => wallPaint(grid, pair, theme),
    [theme],
  )
  return { picture: impossible ? undefined : picture, paintOf }
}
