import { useEffect, useState } from 'react'
import { words } from '../words/words'
import { openFile } from './open-file'
import { tell } from './questions'

/** The whole page takes a job file that is dropped on it. */
export function DropTarget() {
  const [over, setOver] = useState(false)
  useEffect(() => {
    const drag = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return
      event.preventDefault()
      // A picture is dropped on what it shows, not on the page.
      setOver(![...event.dataTransfer.items].every(({ type }) => type.startsWith('image/')))
    }
    const leave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false)
    }
    const drop = (event: DragEvent) => {
      setOver(false)
      if (event.defaultPrevented) return
      const files = event.dataTransfer?.files
      const file = files?.[0]
      if (!files || !file) return
      event.preventDefault()
      void (files.length > 1 ? tell(words.file.severalDropped) : openFile(file))
    }
    window.addEventListener('dragover', drag)
    window.addEventListener('dragleave', leave)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', drag)
      window.removeEventListener('dragleave', leave)
      window.removeEventListener('drop', drop)
    }
  }, [])
  return over ? <div className="drop-here">{words.file.drop}</div> : null
}
