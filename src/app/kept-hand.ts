import { session, setLeftHanded } from '../session/session'
import { withLocalStorage } from './local-storage'

const storedUnder = 'borewall-hand'

/** Takes up the hand chosen on this machine, and keeps each choice to come. */
export function keepHand(): void {
  setLeftHanded(withLocalStorage((storage) => storage.getItem(storedUnder)) === 'left')
  session.subscribe(({ leftHanded }, before) => {
    if (leftHanded === before.leftHanded) return
    withLocalStorage((storage) => {
      if (leftHanded) storage.setItem(storedUnder, 'left')
      else storage.removeItem(storedUnder)
    })
  })
}
