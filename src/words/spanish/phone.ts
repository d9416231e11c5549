import type { phone as english } from '../english/phone'
import type { Texts } from '../texts'

export const phone: Texts<typeof english> = {
  phone: {
    parts: 'Partes de la página',
    findingsOpen: (name, questions) =>
      questions === 1 ? `${name}, una pregunta abierta` : `${name}, ${questions} preguntas abiertas`,
    toFindings: (verdict) => `${verdict} Mostrar los resultados.`,
    menu: 'Menú',
    leftHand: 'Teclas para la mano izquierda',
    rightHand: 'Teclas para la mano derecha',
    pad: {
      label: 'Teclas',
      delete: 'Borrar la última cifra',
      sign: 'Cambiar el signo',
      point: 'Coma o punto',
    },
    repeats: 'Lecturas de este punto de medida, para corregir',
    repeatNumber: (number, figure) => `Lectura ${number}: ${figure}. Corregirla.`,
    leaveIt: 'Dejarlo',
    unreachable: {
      asked: (place) => `¿Qué le impide llegar a ${place}?`,
      only: 'Solo este lugar',
      onlyMeans:
        'Se anota como fuera de alcance y se dibuja rayado. Si estorba una lumbrera, introdúzcala en Montaje.',
      belt: (depth) => `Ningún eje a ${depth}: una banda`,
      beltMeans: (from, to) => `Una banda de ${from} a ${to}: pared que nadie midió. Se cambia en Montaje.`,
      beltName: 'fuera de alcance',
    },
    skipped: (places) => `Saltados: ${places}.`,
    outOfReach: (places) => `Fuera de alcance: ${places}.`,
    measureSkipped: 'Medirlos ahora',
    measureHere: 'Medir aquí',
    ports: 'Dónde están las lumbreras',
    plan: 'Niveles, ejes y lecturas',
    planHint: 'Toque un lugar para medirlo o corregirlo. Vacíe una profundidad o un ángulo para quitarlo.',
    send: 'Enviar',
  },
}
