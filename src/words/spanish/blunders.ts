import type { blunders as english } from '../english/blunders'
import type { Texts } from '../texts'

export const blunders: Texts<typeof english> = {
  blunders: {
    wholeTurn: (place, turns, more) =>
      `La lectura en ${place} es ${turns} de la aguja ${more ? 'mayor' : 'menor'} de lo que hacen esperar sus vecinas. ¿Dio la aguja una vuelta sin que nadie lo notara?`,
    turns: (count) => (count === 1 ? 'una vuelta entera' : `${count} vueltas enteras`),
    digits: (place, read, likelier) =>
      `En ${place}, ${read} queda muy lejos de sus vecinas. ¿Era ${likelier}?`,
    axesSwapped: (level, one, other) =>
      `A ${level} de profundidad, ${one} y ${other} están al revés que más arriba y más abajo. ¿Se anotó cada uno en el lugar del otro?`,
    upsideDown:
      'Este cilindro da más abajo que arriba. ¿Se anotaron los niveles empezando por el extremo equivocado?',
    upsideDownLand:
      'La pared que los segmentos nunca tocan no tiene su medida de origen, pero el nivel del otro extremo sí. ¿Se anotaron los niveles empezando por el extremo equivocado?',
    sign: (read, otherwise) =>
      `La pared sin desgaste da ${read}, fuera de su medida de origen; con el signo cambiado daría ${otherwise}. ¿Va la aguja en el otro sentido?`,
    sleeve: (by) =>
      `La pared sin desgaste tendría su medida de origen si el ajuste estuviera mal en ${by}. ¿Se leyó mal el manguito del micrómetro?`,
    turn: (by) =>
      `La pared sin desgaste tendría su medida de origen si el ajuste estuviera mal en ${by}, una vuelta de la aguja. ¿Se tomó el cero una vuelta más allá?`,
    sleeveByCaliper: (by) =>
      `Las lecturas coincidirían con el pie de rey si el ajuste estuviera mal en ${by}. ¿Se leyó mal el manguito del micrómetro?`,
    turnByCaliper: (by) =>
      `Las lecturas coincidirían con el pie de rey si el ajuste estuviera mal en ${by}, una vuelta de la aguja. ¿Se tomó el cero una vuelta más allá?`,
    oversize: (nearest) =>
      `El manual de taller permite sobremedidas, y no está anotado a cuál se acabó este cilindro. Por sus lecturas, la más cercana es: ${nearest}. Un micrómetro mal leído en medio milímetro daría lo mismo.`,
    caliper: (caliper, read) =>
      `El pie de rey da ${caliper}, las lecturas ${read} de media. Mida otra vez con el pie de rey y revise el ajuste.`,
    spread: (place, spread, usual) =>
      `Las repeticiones en ${place} difieren en ${spread}; con este instrumento son ${usual} como mucho. Limpie la pared y mida otra vez, o quite una.`,
    drift: (by, doubt) =>
      `Las lecturas cambian en ${by} ${doubt} en el orden en que se tomaron. Eso lo hace una pieza que se enfría o un instrumento calentado por la mano. Deje todo junto hasta que se iguale y mida otra vez.`,
    unseen: {
      'setting-and-sign':
        'un ajuste equivocado en medio milímetro o un signo cambiado (lo mostraría un nivel en la pared que los segmentos nunca tocan, o un pie de rey)',
      'whole-turn': 'una vuelta entera de la aguja en todos los puntos de medida',
      digits:
        'dos cifras cambiadas de orden en una lectura (leer dos veces cada punto de medida lo mostraría)',
      'levels-upside-down': 'niveles anotados empezando por el extremo equivocado',
      'axes-swapped': 'dos ejes anotados cada uno en el lugar del otro',
      'drift-with-order':
        'una deriva lenta mientras se medía, porque los puntos se leyeron fila por fila (lea otra vez el primero al final)',
    },
    unseenSentence: (list) => `Estas lecturas no muestran: ${list.join('; ')}.`,
    answered: 'pregunta respondida: es correcta',
    changeNames: {
      'shift-repeats': 'lectura corregida',
      'swap-axes': 'ejes intercambiados',
      'turn-levels-over': 'niveles invertidos',
      'turn-sign-over': 'signo cambiado',
      'shift-setting': 'ajuste corregido',
      'say-oversize': 'sobremedida del cilindro',
    },
  },
}
