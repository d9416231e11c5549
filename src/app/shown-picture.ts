import { createRef } from 'react'
import type { BorePictureHandle } from '../scene/BorePicture'

/** The picture on the page, while there is one. */
export const shownPicture = createRef<BorePictureHandle>()
