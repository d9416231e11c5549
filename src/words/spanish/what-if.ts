import type { whatIf as english } from '../english/what-if'
import type { Texts } from '../texts'

export const whatIf: Texts<typeof english> = {
  title: 'Qué pasaría si',
  lead: 'Mueva un regulador, y la decisión lo sigue. Nada de esto cambia el trabajo.',
  asItIs: (headline) => `Tal como está: ${headline}`,
  thenIt: (headline) => `Entonces: ${headline}`,
  labels: {
    plain: {
      hours: 'Seguir funcionando desde aquí',
      temperature: 'Temperatura del cilindro',
      limit: 'Medida máxima permitida',
      piston: 'Pistón disponible, como lo da el micrómetro',
      reading: 'Lectura',
    },
    reading: (place) => `Diámetro en ${place}`,
  },
  station: 'Punto de medida de la lectura',
  hoursOn: (on, run) => `${on} h más, ${run} h de funcionamiento`,
  looking: 'Buscando dónde cambia…',
  never: (from, to) => `No cambia de ${from} a ${to}.`,
  tips: (at, off, outcome) => `Cambia en ${at}, ${off}: ${outcome}.`,
  off: {
    later: (hours) => `${hours} h más tarde`,
    sooner: (hours) => `${hours} h antes`,
    warmer: (kelvin) => `${kelvin} K más caliente`,
    colder: (kelvin) => `${kelvin} K más frío`,
    more: (microns) => `${microns} más`,
    less: (microns) => `${microns} menos`,
  },
  undecided: 'ninguna decisión',
  onlyThis:
    'Solo se prueba este cilindro: una elección que comparten todos los cilindros se hace para él solo.',
  reset: 'Tal como está',
  closer: 'Calcular con más detalle qué seguridad hay',
  running: (done, all) => `${done} de ${all} conjuntos de medidas verdaderas`,
  cancel: 'Parar',
  failed: 'No se pudo calcular aquí. Recargue la página e inténtelo otra vez.',
  closely: (trials) => `Con ${trials} conjuntos de medidas verdaderas:`,
}
