import type { handOver as english } from '../english/hand-over'
import type { Texts } from '../texts'

export const handOver: Texts<typeof english> = {
  whole: 'Este archivo está completo. No necesita red y no envía nada a ninguna parte.',
  made: (app, day) => `Hecho con ${app} el ${day}.`,
  back: (app) =>
    `${app} abre este archivo como un trabajo: elíjalo o suéltelo sobre la página. Todas las lecturas están en él.`,
  customer: (customer) => `Para ${customer}`,
  parts: {
    drawings: (bore) => `${bore}: los dibujos`,
    figures: 'Las cifras',
    readings: 'Las lecturas tal como se anotaron',
    photographs: 'Fotografías de la pared',
  },
  pictures: {
    now: (bore) => `${bore}, tal como está ahora`,
    beside: (other) => `Para comparar: ${other}`,
    alt: (bore, verdict) => `Imagen de la pared. ${bore}: ${verdict}`,
    altBeside: (other) => `Imagen de la pared. ${other}`,
    marks: 'Qué significan los colores y las marcas',
  },
  turning: {
    turnLeft: 'Girar a la izquierda',
    turnRight: 'Girar a la derecha',
    closer: 'Más cerca',
    further: 'Más lejos',
    above: 'Desde arriba',
    whole: 'De frente',
    byFinger: 'Girar con un dedo',
    fingerDone: 'Dejar que el dedo desplace la página',
    keys: 'Arrástrela para girarla. Las flechas la giran, más y menos la acercan y la alejan.',
  },
  drawings: {
    map: 'La pared desarrollada, vista desde dentro. El ángulo va en horizontal, la profundidad hacia abajo.',
    section: (depth, factor) => `A través del cilindro a ${depth}. ${factor}.`,
    profile: (axis) => `A lo largo del cilindro sobre ${axis}.`,
    scan: 'Desarrollado, sin la forma suave: el azul sobresale, el ámbar queda hundido. Con contorno, lo que destaca, con su número en la lista.',
  },
  readings: {
    lead: 'Cada lectura tal como se anotó, antes de llevarla a 20 °C.',
    sizes: 'Medidas en mm',
    dial: 'Lo que mostró el comparador, µm',
    none: '–',
    depth: 'Profundidad',
  },
  photograph: (number, finding) => `${number}: ${finding}`,
}
