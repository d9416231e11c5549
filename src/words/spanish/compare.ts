import type { compare as english } from '../english/compare'
import type { Texts } from '../texts'

export const compare: Texts<typeof english> = {
  pages: {
    label: 'Páginas',
    bench: 'Medir',
    compare: 'Comparar',
    show: 'Mostrar',
    report: 'Informe',
    toBench: 'Volver a Medir',
    explain: 'Explicar al propietario',
  },
  compare: {
    title: 'Comparados',
    lead: 'De dos a ocho, todos dibujados igual: una exageración, una vista, un lugar señalado.',
    nothing: 'Todavía no hay nada que comparar',
    nothingSaid:
      'Para comparar hacen falta dos mediciones con lecturas: mida otra vez este cilindro, o añada otro cilindro del motor o uno nuevo para comparar.',
    tooFew: 'Elija al menos dos.',
    full: 'Ocho como mucho: quite antes uno.',
    walls: 'Paredes una al lado de otra',
    show: (name) => `Mostrar ${name}`,
    ofSurvey: (bore, survey) => `${bore}, ${survey}`,
    hours: (hours) => `${hours} h`,
    survey: (number, all) => `medición ${number} de ${all}`,
    flat: 'Este navegador no dibuja aquí ninguna imagen 3D. Los mapas muestran las mismas paredes, desarrolladas.',
    less: {
      title: 'Diferencia',
      lead: 'Uno menos otro, en los puntos de medida que ambos tienen.',
      one: 'Este',
      other: 'menos este',
      none: 'ninguno',
      name: (one, other) => `${one} menos ${other}`,
      drawn: (factor) => `diferencia dibujada × ${factor}`,
      noStations:
        'Estos dos no tienen ningún punto de medida en común: niveles a menos de 1 mm en el mismo eje. No hay diferencia que leer.',
      readOtherwise:
        'Uno se leyó con tres palpadores, que dan la media de un nivel; el otro, con dos. Su diferencia sería la de dos cosas distintas.',
      withinDoubt: 'dentro de su incertidumbre, quizá ninguna',
      standsOut: 'borde de donde destaca más allá de su incertidumbre',
      notBoth: 'no medido en ambos',
      none0: 'sin diferencia',
      tighter: 'el primero es más estrecho',
      looser: 'el primero es más ancho',
      key: 'Qué significan los colores de la diferencia',
      table: 'Diferencia en cada punto de medida, µm, con su incertidumbre',
      level: 'Profundidad',
      stands: 'destaca',
      within: 'dentro de su incertidumbre',
      rows: {
        largest: 'Diferencia máxima',
        mean: 'Diferencia media',
        asMade: 'De fabricación',
      },
      asMade: (microns) =>
        `Dos cilindros nuevos pueden diferir en ${microns} de fabricación: lo que sea menos no tiene por qué ser desgaste.`,
      warning: 'No sujetos por igual',
    },
    time: {
      title: 'A lo largo del tiempo',
      lead: 'Una pared que pasa de medición en medición, y sigue en las horas por venir donde una recta dice cómo se desgasta. Las flechas van paso a paso.',
      show: (bore) => `Mostrar ${bore} pasando por sus mediciones`,
      slider: (bore) => `${bore} por sus mediciones`,
      name: (bore) => `${bore} a lo largo del tiempo`,
      at: (number, all, survey) => `Medición ${number} de ${all}: ${survey}`,
      between: (from, to) => `Entre ${from} y ${to}: solo dibujado`,
      betweenHours: (hours) => `Unas ${hours} h, entre mediciones: solo dibujado`,
      betweenShort: 'solo dibujado',
      faded: 'difuminado: entre mediciones, nadie lo midió',
      ahead: {
        at: (hours) => `A las ${hours} h, por delante: medidas solo según sus rectas`,
        short: (hours) => `${hours} h, por delante`,
        line: (place, figure) => `${place}, el primero en llegar a su límite, según su recta: ${figure}.`,
        lastTwo: (figure) => `Según las dos últimas mediciones: ${figure}.`,
        before: (earliest, limit) => `Antes de las ${earliest} h, lo más pronto que alcanza ${limit}.`,
        past: (earliest, limit) =>
          `Desde las ${earliest} h puede estar por encima de ${limit}: mida antes de eso.`,
        sides:
          'Cada uno de los dos lados vale por sí solo en 19 de cada 20 casos, si sigue desgastándose como hasta ahora.',
        faded: 'difuminado: la pared como se midió por última vez; nadie conoce su forma más adelante',
      },
    },
    readOut: {
      difference: (depth, angle, figure) =>
        `${depth} · ${angle} · ${figure} · en un punto de medida que ambos tienen`,
      drawn: (depth, angle, figure, distance) =>
        `${depth} · ${angle} · dibujado ${figure}; el punto más cercano que ambos tienen, a ${distance}`,
      notBoth: (depth, angle) => `${depth} · ${angle} · no medido en ambos`,
      ahead: (place, hours, figure) => `${place} · a las ${hours} h según su recta ${figure}`,
      aheadUnknown: 'entre los puntos de medida no se sabe nada de las horas por venir',
      between: (depth, angle) => `${depth} · ${angle} · entre mediciones, solo dibujado`,
    },
  },
}
