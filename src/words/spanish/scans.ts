import type { scans as english } from '../english/scans'
import type { Texts } from '../texts'

export const scans: Texts<typeof english> = {
  scans: {
    title: 'Barridos',
    importTitle: (file) => `Un barrido de ${file}`,
    asScan: 'Son radios de un barrido',
    shown: 'Dibujado a partir de',
    readings: 'Lecturas',
    unnamed: (index) => `Barrido ${index}`,
    local: 'Sin la forma suave',
    localTitle:
      'Quita la forma que corre suave alrededor y a lo largo del cilindro, para que destaque lo local',
    status: {
      fetching: 'Trayendo el barrido…',
      fitting: 'Ajustando el eje del barrido…',
      'not-here':
        'Los radios de este barrido no están en este navegador. Abra el archivo del trabajo que los lleva, o importe el barrido otra vez.',
      'no-axis':
        'No se puede ajustar un eje: ningún nivel de este barrido tiene seis radios sin un hueco de media vuelta. Haga el barrido todo alrededor.',
      failed: 'Este navegador no pudo ajustar el barrido. Cierre otras páginas y abra el trabajo otra vez.',
    },
    noSize: 'sin medida: 0 es el centro del barrido',
    noForm: '0 es la forma suave',
    onRadius: (micrometres) => `${micrometres} en el radio`,
    noVerdict: 'Forma en torno al eje ajustado, en el radio. Sin medida: ni límites ni dictamen.',
    localSaid: 'Lo que destaca de la forma suave, en el radio. Aquí no hay límites.',
    sized: 'El doble del radio en torno al eje ajustado; las lecturas le dan su medida.',
    pastEnd: (scanned, length) =>
      `El barrido llega hasta ${scanned}, más allá de los ${length} que se dan como longitud del cilindro.`,
    picture: 'El cilindro como lo barrió un palpador radial, en tres dimensiones',
    nothing: 'Señale la pared para leerla.',
    at: (depth, angle) => `${depth} · ${angle}`,
    noRadius: 'ningún radio: una lumbrera, o no medido',
    port: (name) => `lumbrera «${name}»`,
    radius: (radius) => `radio ${radius} respecto al centro`,
    over: (over) => `${over} respecto a la forma suave`,
    twiceRadius: (size) => `doble del radio ${size}`,
    radii: (count) => `${count} radios`,
    twiceRadii: (count) => `${count} radios, doblados,`,
    levelText: (radii, place, least, most) => `${radii} en ${place}, de ${least} a ${most}.`,
    oneWall: 'Un palpador radial lee una sola pared: lo de enfrente se lee aparte.',
    list: {
      levels: (levels, angles) => `${levels} niveles × ${angles} ángulos`,
      missing: (count) => (count === '1' ? '1 lugar vacío' : `${count} lugares vacíos`),
      look: (name) => `Ver ${name}`,
      remove: (name) => `Quitar ${name}`,
      cleaning: (name) => `${name}: antes o después de limpiar`,
      tie: (name) => `${name}: medida según`,
      noTie: 'sin medida',
      tieSurvey: (survey) => `medida según ${survey}`,
      survey: (index) => `medición ${index}`,
      noTies:
        'Ninguno de sus puntos de medida cae sobre metal en el barrido, así que el barrido no tiene medida.',
      tied: (count, doubt) => `Medida según ${count} puntos de enlace, ${doubt} en el radio.`,
      tiesDisagree: 'Difieren más de lo que explica su incertidumbre: ¿es el mismo cilindro, sin cambios?',
    },
    changes: {
      taken: (name) => `barrido ${name} tomado`,
      removed: (name) => `barrido ${name} quitado`,
      cleaning: 'antes o después de limpiar',
      tie: 'lo que da su medida al barrido',
    },
    leftOut: {
      notHere: (count) =>
        count === 1
          ? 'Falta un barrido: no está en este navegador.'
          : `Faltan ${count} barridos: no están en este navegador.`,
      noRoom: (count) =>
        count === 1
          ? 'Falta un barrido: el archivo sería más grande de lo que lee Borewall.'
          : `Faltan ${count} barridos: el archivo sería más grande de lo que lee Borewall.`,
    },
    damaged: (count) =>
      count === 1
        ? 'Un barrido de este archivo está dañado y se dejó fuera.'
        : `${count} barridos de este archivo están dañados y se dejaron fuera.`,
  },
}
