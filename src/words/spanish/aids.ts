import type { aids as english } from '../english/aids'
import type { Texts } from '../texts'

export const aids: Texts<typeof english> = {
  aids: {
    menu: 'Voz y pedal',
    title: 'Voz y pedal',
    lead: 'Para manos que sujetan un instrumento. Se guarda solo en este equipo.',
    voice: 'Decir cada punto de medida, cada número tomado y cada pregunta',
    noVoice: 'Este navegador no tiene voz.',
    try: 'Probar',
    trial: '25 mm de profundidad, eje 90°. 54,012.',
    pedal: 'Un pedal escribe una tecla. Píselo una vez por cada cosa que deba hacer:',
    actions: {
      take: 'Tomar el número y seguir',
      again: 'Tomarlo y leer otra vez el mismo punto de medida',
      back: 'Volver al punto de medida anterior',
      skip: 'Saltar este punto de medida',
    },
    press: (action) => `${action}: pise ahora el pedal, o pulse Esc para dejarlo`,
    set: (action, key) => `${action}: ${key}. Cambiar.`,
    choose: (action) => `${action}: elegir un pedal`,
    none: 'ningún pedal',
    remove: (action) => `Quitar el pedal de: ${action}`,
    typesText: (key) =>
      `La tecla ${key} hace falta para escribir y moverse. Ponga el pedal en otra, como F13 o AvPág.`,
    taken: (key, action) => `${key} ya sirve para: ${action}.`,
    next: (place) => `Siguiente: ${place}.`,
  },
  spoken: {
    point: 'coma',
    minus: 'menos',
    plusMinus: 'más menos',
    degrees: 'grados',
    millimetres: 'milímetros',
    microns: 'micras',
    inches: 'pulgadas',
  },
}
