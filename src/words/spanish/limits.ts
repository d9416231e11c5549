import type { limits as english } from '../english/limits'
import type { Texts } from '../texts'

export const limits: Texts<typeof english> = {
  limits: {
    title: 'Límites',
    source: 'Del manual de taller de este motor. Borewall no trae límites.',
    band: 'De origen {newMin} a {newMax} mm; límite de desgaste {wearLimit} mm.',
    ovality: 'Ovalización hasta {ovalityLimit} mm, regla: {ovalityRule}.',
    ovalityAxes: 'El manual llama X al eje de {ovalityX}° e Y al eje de {ovalityY}°.',
    taper: 'Conicidad hasta {taperLimit} mm, regla: {taperRule}.',
    proportions:
      'En proporción: ovalización hasta {ovalityPerMm} y conicidad hasta {taperPerMmOfBore} mm por mm de diámetro; conicidad hasta {taperPerMmOfTravel} mm por mm de carrera, que es de {travel} mm. De varios límites se evalúa el menor.',
    more: 'Más límites',
    oversizes: 'Sobremedidas del manual: {oversizes} mm. Este cilindro se acabó a: {oversize}.',
    standardSize: 'medida estándar',
    oversizeOf: (mm) => `+${mm}`,
    oversizeMoves: (oversize) =>
      `Acabado a una sobremedida de ${oversize}: todas las medidas de los límites son mayores en otro tanto.`,
    interval: 'Se debe medir otra vez cada {serviceInterval} h.',
    grade: 'Clase {gradeName}: de {gradeMin} a {gradeMax}',
    boreGrade: 'Marcado en este cilindro: {grade}.',
    labels: {
      newMin: 'Medida mínima de origen, mm',
      newMax: 'Medida máxima de origen, mm',
      wearLimit: 'Límite de desgaste, medida máxima en servicio, mm',
      ovalityLimit: 'Límite de ovalización, mm',
      ovalityRule: 'Regla para la ovalización',
      ovalityX: 'Eje X del manual, grados',
      ovalityY: 'Eje Y del manual, grados',
      taperLimit: 'Límite de conicidad, mm',
      taperRule: 'Regla para la conicidad',
      ovalityPerMm: 'Límite de ovalización por mm de diámetro, mm',
      taperPerMmOfBore: 'Límite de conicidad por mm de diámetro, mm',
      taperPerMmOfTravel: 'Límite de conicidad por mm de carrera, mm',
      travel: 'Carrera del pistón, mm',
      serviceInterval:
        'Intervalo de servicio, horas tras las que el manual quiere que se mida otra vez el cilindro',
      gradeName: 'Nombre de la clase',
      gradeMin: 'Medida mínima de la clase, mm',
      gradeMax: 'Medida máxima de la clase, mm',
      grade: 'Clase marcada en este cilindro',
      oversizes: 'Sobremedidas del manual, mm, con espacios entre ellas',
      oversize: 'Sobremedida de este cilindro',
    },
    none: 'no indicado',
    noGrade: 'ninguna clase',
    addGrade: 'Añadir una clase',
    removeGrade: (name) => `Quitar la clase ${name}`,
    wearAlone: 'Con un límite de desgaste, solo se evalúa este; la medida de origen se dibuja.',
    rulesDiffer:
      'Las mismas lecturas pueden cumplir una regla y no cumplir otra. Elija la que imprime su manual.',
  },
  ovalityRules: {
    'largest-less-smallest-at-a-level': 'máximo menos mínimo en un nivel',
    'across-less-along-at-a-level': 'X menos Y en un nivel',
    pooled: 'máximo en X menos mínimo en Y, todos los niveles juntos',
  },
  taperRules: {
    'between-levels-of-an-axis': 'máximo menos mínimo a lo largo de un eje',
    'top-less-bottom-of-an-axis': 'arriba menos abajo en un eje',
    'largest-top-less-largest-bottom': 'máximo arriba menos máximo abajo',
    'largest-top-less-smallest-bottom': 'máximo arriba menos mínimo abajo',
    'level-means': 'media arriba menos media abajo',
  },
}
