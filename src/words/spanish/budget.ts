import type { budget as english } from '../english/budget'
import type { Texts } from '../texts'

export const budget: Texts<typeof english> = {
  budget: {
    title: 'De qué se compone la incertidumbre',
    of: (place, doubt) => `En ${place}, ${doubt} (95 %), compuesta de estas incertidumbres típicas u.`,
    heads: { part: 'Parte', amount: 'u, µm', share: 'Proporción' },
    kinds: {
      'wall-expansion': 'cuánto se dilata la pared con el calor',
      'standard-expansion': 'cuánto se dilata el patrón con el calor',
      'reference-temperature': 'temperatura',
      'bore-thermometer': 'termómetro en el cilindro',
      'temperature-difference': 'cilindro y patrón no igual de calientes',
      standard: 'el patrón mismo',
      'standard-error': 'el micrómetro sin comprobar',
      setting: 'ajuste del instrumento',
      'zero-reading': 'lectura del cero',
      'gauge-warmth': 'calentamiento del instrumento desde su ajuste',
      'drift-preset': 'deriva, sin cero final',
      'drift-measured': 'deriva entre los ceros',
      repeatability: 'repeticiones',
      scale: 'comparador o escala',
      place: 'profundidad del instrumento en una pendiente',
      rocking: 'inclinación que quedó al bascular',
      'piston-expansion': 'cuánto se dilata el pistón con el calor',
      'piston-reading': 'lectura del micrómetro sobre el pistón',
      'piston-range': 'las medidas que el pistón puede tener',
    },
    assumed: 'supuesto',
    distributions: {
      normal: 'normal',
      rectangular: 'rectangular',
      student: (freedom) => `normal, ${freedom} grados de libertad`,
    },
    scopes: {
      job: 'un solo error para todo el trabajo',
      standard: 'uno para todo lo ajustado con este patrón',
      thermometer: 'uno para todo lo que leyó este termómetro',
      'set-up': 'uno para este montaje',
      bore: 'uno para este cilindro',
      piston: 'uno para este pistón',
      station: 'solo de este punto de medida',
      repeat: 'de cada lectura por separado',
    },
    inputs: {
      K: (u, sensitivity) => `${u} K × ${sensitivity}/K`,
      '1/K': (u, sensitivity) => `${u} por millón y K × ${sensitivity}·K`,
      mm: (u, sensitivity) => `${u} × ${sensitivity}`,
    },
    mostly: (part, share) => `La mayor parte: ${part} (${share}).`,
    shared: (part, share) => `La parte más grande: ${part} (${share}).`,
    improve: {
      'more-repeats': (before, after) => `Cada punto de medida leído dos veces más: ${before} → ${after}.`,
      'set-by-ring': (before, after) => `Ajustado con un anillo: ${before} → ${after}.`,
      'record-what-is-missing': (before, after) =>
        `Lo que se supone, medido y anotado: ${before} → ${after}.`,
      'know-the-temperatures': (before, after) =>
        `Temperaturas conocidas el doble de bien: ${before} → ${after}.`,
    },
    nothing: 'Ningún paso por sí solo quitaría aquí una vigésima parte.',
  },
}
