import type { gaugeCheck as english } from '../english/gauge-check'
import type { Texts } from '../texts'

export const gaugeCheck: Texts<typeof english> = {
  gaugeCheck: {
    title: 'Repetibilidad',
    heading: 'Comprobaciones de instrumentos',
    help: 'Lea un mismo lugar una y otra vez, diez veces o más: un punto de medida, o el anillo. Saque el instrumento cada vez y deje todo lo demás como está. Escriba las lecturas en el orden en que se tomaron, con espacios entre ellas.',
    field: (gauge) => `Lecturas de una comprobación: ${gauge}`,
    again: (gauge, number) => `Lecturas de la comprobación ${number}: ${gauge}`,
    date: (gauge, number) => `Día de la comprobación ${number}, año-mes-día: ${gauge}`,
    writtenAs: (gauge) => `Qué son las lecturas de la comprobación: ${gauge}`,
    written: {
      sizesMm: (unit) => `medidas en ${unit}`,
      dialUm: (unit) => `lecturas del comparador en ${unit}`,
    },
    studies: 'Varias personas, varias piezas',
    studiesLoading: 'Un momento…',
    another: 'Otra comprobación, {writtenAs}:',
    refused: (piece, why) => `«${piece}»: ${why}`,
    add: 'Guardar esta comprobación',
    remove: (gauge, number) => `Quitar la comprobación ${number}: ${gauge}`,
    checked: 'Comprobado el {date}, {unit}:',
    of: (gauge, day) => (day === undefined ? gauge : `${gauge}, ${day}`),
    one: 'Una sola lectura no muestra cómo repite un instrumento: hacen falta dos; a partir de diez dicen algo.',
    scatter: (readings, deviation, freedom, low, high) =>
      `${readings} lecturas se dispersan con una desviación típica de ${deviation}, conocida con ${freedomOf(freedom)}: está entre ${low} y ${high} en 95 de cada 100 comprobaciones así.`,
    belowStep: (readings, deviation, step, counted) =>
      `${readings} lecturas se dispersan con una desviación típica de ${deviation}, menos de lo que puede mostrar el paso de ${step}; en su lugar cuenta ${counted}.`,
    drift: {
      none: (drift, doubt) =>
        `De la primera a la última derivan ${drift} ± ${doubt}: ninguna deriva que destaque.`,
      standsOut: (drift, doubt) =>
        `De la primera a la última derivan ${drift} ± ${doubt}. Eso destaca: deje que instrumento y pieza lleguen a una misma temperatura, mire que todos los tornillos estén apretados y compruebe otra vez.`,
    },
    share: (six, share, band) =>
      `Seis desviaciones típicas de una lectura, ${six}, son el ${share} del margen de ${band} entre la medida mínima y la máxima de origen.`,
    good: (bore, repeats, doubt) =>
      `Con esta dispersión, un punto de medida del cilindro ${bore}, leído ${repeats === 1 ? 'una vez' : `${repeats} veces`}, es exacto hasta ${doubt}, contando todo lo demás de su montaje.`,
    answer: {
      band: (margin, band) =>
        `Eso puede responder si un cilindro está dentro del margen de ${band}: las lecturas que quedan ${margin} o más dentro de los dos límites están demostradas.`,
      never: (band, needed) =>
        `Eso no puede responder si un cilindro está dentro del margen de ${band}: hace falta ${needed}.`,
      wear: (margin) =>
        `Eso responde si está dentro del límite de desgaste, salvo en lecturas a menos de ${margin} del límite: esas siguen demasiado justas para decidir.`,
      'one-limit': (margin) =>
        `Eso responde si está dentro del límite, salvo en lecturas a menos de ${margin} de él: esas siguen demasiado justas para decidir.`,
      nothing: 'No hay límites introducidos, así que todavía no hay pregunta que pueda responder.',
    },
    notUsed:
      'Ningún cilindro de este motor se midió con él, así que todavía no hay pregunta que pueda responder.',
    use: (deviation, freedom) => `Tomar ${deviation} y ${freedomOf(freedom)} para este instrumento`,
    inUse:
      'Estas son ahora las cifras propias del instrumento. Una medición con bastantes repeticiones propias se guía en cambio por las suyas.',
  },
}

function freedomOf(freedom: number): string {
  return freedom === 1 ? '1 grado de libertad' : `${freedom} grados de libertad`
}
