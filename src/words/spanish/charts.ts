import type { charts as english } from '../english/charts'
import type { Texts } from '../texts'

export const charts: Texts<typeof english> = {
  charts: {
    views: {
      label: 'Vistas planas de la pared',
      map: 'Mapa',
      section: 'Sección',
      profile: 'Perfil',
      hours: 'Horas',
    },
    between: 'Lo dibujado entre las lecturas no está medido.',
    save: 'Guardar como SVG',
    saveTitle: 'Guardar esta vista como un dibujo que se ve nítido a cualquier tamaño',
    saved: (name) => `Guardado como ${name}`,
    notSaved: 'No se pudo guardar. Inténtelo otra vez, o haga una captura de pantalla.',
    noReadings: 'Esta vista aparece con la primera lectura.',
    reading: (place, size) => `${place}: ${size}`,
    uncounted: (reading) => `${reading}, en ningún dictamen`,
    above: (reading) => `${reading}, por encima del límite`,
    below: (reading) => `${reading}, por debajo del límite`,
  },
  section: {
    title: (depth) => `Sección a ${depth} de profundidad`,
    list: (depth) =>
      `Lecturas a ${depth}. Las flechas izquierda y derecha van alrededor, arriba y abajo a otro nivel.`,
    above: 'Nivel superior',
    below: 'Nivel inferior',
    at: (depth) => `a ${depth} de profundidad`,
    mean: (size) => `Media ${size}.`,
    ovalAcross: (oval, axis, doubt) => `Óvalo ${oval}, eje largo ${axis} ± ${doubt}.`,
    ovalNone: (most) => `No destaca ningún óvalo; como mucho ${most}.`,
    ovalThree: 'Tres ejes no pueden distinguir un óvalo de una forma de cuatro lóbulos.',
    ovalAtLeast: (least) => `Óvalo de ${least} o más; dos ejes no dicen cuánto más.`,
    ovalTwoUnseen: 'Dos ejes no muestran un óvalo seguro, y pueden pasar por alto uno que esté entre ellos.',
    oneAxis: 'Un solo eje no muestra nada de un óvalo.',
    land: 'Zona sin segmentos: los segmentos no pasan por aquí.',
    notRead: 'Nadie midió en este nivel.',
    twoContacts:
      'Dibujado igual por los dos lados: dos palpadores no pueden decir qué pared se ha desgastado.',
    threeContacts:
      'Tres palpadores leen la media de un nivel: un anillo redondo, medido bajo cada palpador, y ningún óvalo.',
  },
  profile: {
    title: (axis) => `Perfil a lo largo de ${axis}`,
    list: (axis) =>
      `Lecturas a lo largo de ${axis}. Las flechas arriba y abajo recorren la profundidad, izquierda y derecha van a otro eje.`,
    before: 'Eje anterior',
    after: 'Eje siguiente',
    at: (axis) => `eje ${axis}`,
    largest: (size, depth) => `Máximo ${size} a ${depth}.`,
    smallest: (size, depth) => `Mínimo ${size} a ${depth}.`,
    alone: (size, depth) => `Una lectura, ${size} a ${depth}.`,
    notRead: 'Nadie midió a lo largo de este eje.',
    travel: (from, to) =>
      `Los segmentos van de ${from} a ${to}; la pared fuera de ahí es zona sin segmentos.`,
    ringTravel: 'recorrido de los segmentos',
    doubt: 'Barras y sombreado: ± U (95 %). Interrumpido donde nadie midió.',
    round: 'Tres palpadores leen la media de un nivel: todos los ejes muestran esa media.',
  },
  savedChart: {
    fileParts: { map: 'mapa', section: 'seccion', profile: 'perfil', hours: 'horas' },
    map: 'La pared desarrollada, ángulo en horizontal, profundidad hacia abajo.',
    drawn: (title, factor) => `${title}. ${factor}.`,
    lines: (step) => `Líneas cada ${step} en el diámetro.`,
    hours: 'Horas de funcionamiento en horizontal, medida hacia arriba en mm.',
    across: 'Medida en horizontal en mm, profundidad hacia abajo en mm.',
    marks:
      'Rayado: nadie midió. Punteado: demasiado justo para decidir. Discos: lecturas; barras: su ± U (95 %).',
    mapMarks: 'Rayado: nadie midió. Punteado: demasiado justo para decidir. Discos: lecturas.',
  },
}
