import type { surface as english } from '../english/surface'
import type { Texts } from '../texts'

export const surface: Texts<typeof english> = {
  surface: {
    title: 'Superficie',
    kinds: {
      scratch: 'raya',
      scuff: 'marca de gripado',
      'stuck-metal': 'metal adherido',
      'bare-aluminium': 'aluminio a la vista',
      flaking: 'desconchado',
      ridge: 'reborde',
      pits: 'picaduras',
      rust: 'óxido',
      glaze: 'vitrificado',
      'cross-hatch-worn-off': 'bruñido cruzado borrado',
      'cross-hatch-seen': 'bruñido cruzado visible',
    },
    shapes: { patch: 'mancha', streak: 'tira a lo largo de la carrera' },
    nail: {
      yes: 'engancha la uña',
      no: 'no engancha la uña',
      notTried: 'no se probó con la uña',
    },
    numbered: (number, kind) => `${number} ${kind}`,
    place: (depths, angles) => `${depths}, ${angles}`,
    between: (from, to) => `de ${from} a ${to}`,
    allRound: 'todo alrededor',
    line: (title, place, parts) => `${title}: ${[place, ...parts].join('; ')}`,
    across: {
      measured: (length) => `${length} de ancho, medido`,
      place: (length) => `${length} de ancho por su lugar`,
    },
    along: {
      measured: (length) => `${length} de largo, medido`,
      place: (length) => `${length} de largo por su lugar`,
    },
    photographs: (count) => (count === 1 ? 'una fotografía' : `${count} fotografías`),
    add: 'Añadir un hallazgo en la superficie',
    orDrag: 'Escriba el lugar de un hallazgo en la superficie; o arrastre sobre él en el mapa plano',
    mark: 'Marcar',
    markHelp: 'Dibujar con el dedo un hallazgo en la superficie sobre el mapa plano',
    marking: 'Dibuje con el dedo sobre lo que encontró.',
    record: 'Anotarlo',
    remove: (title) => `Quitar ${title}`,
    sentence:
      'Qué: {kind}, en forma de {shape}, de {fromDepthMm} a {toDepthMm} mm de profundidad y de {fromDegrees} a {toDegrees}°; {nail}. Ancho {acrossMm} mm, largo {alongMm} mm. Nota: {note}',
    draft:
      'Qué: {kind}, de {fromDepthMm} a {toDepthMm} mm de profundidad y de {fromDegrees} a {toDegrees}°, en sentido horario desde arriba.',
    drawHelp: 'O arrastre sobre él en el mapa plano; un dedo dibuja allí después de pulsar Marcar.',
    angleHelp:
      'Los ángulos pueden cruzar 0°: de 350 a 10 son veinte grados en torno al frente. Dos veces el mismo es una línea, de 0 a 360 todo alrededor.',
    labels: {
      kind: 'Tipo',
      shape: 'Forma',
      fromDepthMm: 'Desde la profundidad, mm',
      toDepthMm: 'Hasta la profundidad, mm',
      fromDegrees: 'Desde el ángulo, grados',
      toDegrees: 'Hasta el ángulo, grados',
      nail: 'Uña',
      acrossMm: 'Ancho alrededor del cilindro, mm',
      alongMm: 'Largo a lo largo del cilindro, mm',
      note: 'Nota',
    },
    ends: { fromDepthMm: 'arriba', toDepthMm: 'abajo', fromDegrees: 'desde', toDegrees: 'hasta' },
    missing: (labels) => `Falta por escribir: ${labels.join('; ')}.`,
    byPlace: (length) => `${length} por su lugar`,
    noNote: 'ninguna',
    changes: {
      added: 'hallazgo en la superficie añadido',
      changed: 'hallazgo en la superficie',
      removed: 'hallazgo en la superficie quitado',
      photograph: 'fotografía añadida',
      photographRemoved: 'fotografía quitada',
    },
    lead: 'Superficie: las cifras solas no deciden.',
    stops: {
      'bare-aluminium': (where) =>
        `Aluminio a la vista (${where}) puede acabar con un cilindro que está en medida.`,
      flaking: (where) => `El desconchado (${where}) puede acabar con un cilindro que está en medida.`,
      'catches-nail': (where, kind) =>
        `La uña se engancha (${kind}, ${where}): eso puede acabar con un cilindro que está en medida.`,
      'pits-in-ring-path': (where) =>
        `Picaduras en el recorrido de los segmentos (${where}) pueden acabar con un cilindro que está en medida.`,
      'pits-perhaps-in-ring-path': (where) =>
        `Las picaduras (${where}) pueden acabar con un cilindro que está en medida si los segmentos pasan por ahí: introduzca por dónde van los segmentos.`,
    },
    decides: 'Qué se hace con él deben decirlo el manual de taller y un rectificador cualificado.',
    nailWouldTell: (where) =>
      `Pase la uña por la marca (${where}): que se enganche o no decide más que su aspecto.`,
    hereToo: (titles) => `aquí: ${titles}`,
  },
}
