import type { simulation as english } from '../english/simulation'
import type { Texts } from '../texts'

export const simulation: Texts<typeof english> = {
  simulation: {
    start: 'Comprobar por simulación',
    lead: 'Sortea de nuevo cada error, muchas veces, y mira si los ± de los diámetros se sostienen.',
    running: (done, all) => `${done} de ${all} sorteos`,
    cancel: 'Parar',
    agrees: (trials, apart, place) =>
      `${trials} sorteos de cada error coinciden con los ± de los diámetros: sus extremos difieren en ${apart} como mucho, en ${place}.`,
    differs: (trials, apart, place) =>
      `${trials} sorteos de cada error no coinciden con los ± de los diámetros: sus extremos difieren en ${apart} en ${place}. Fíese allí del intervalo simulado:`,
    interval: (low, high) => `de ${low} a ${high}`,
    micronInterval: (low, high) => `de ${low} a ${high}`,
    inside: (linear, simulated) => `Dentro de los límites allí: ${linear}; según los sorteos, ${simulated}.`,
    figuresAgree: (kinds) =>
      `También coinciden los ± y los márgenes de lo que se saca de varios puntos de medida: ${kinds}.`,
    kinds: {
      'level-mean': 'medias de nivel',
      'fitted-oval': 'óvalos ajustados',
      ovality: 'ovalización',
      taper: 'conicidad',
      'mean-difference': 'diferencias medias',
      'largest-difference': 'diferencias máximas',
    },
    names: {
      'level-mean': (place) => `Media en ${place}`,
      'fitted-oval': (place) => `Óvalo ajustado en ${place}`,
      ovality: (rule) => `Ovalización, ${rule}`,
      taper: (rule) => `Conicidad, ${rule}`,
      'mean-difference': (bore) => `Diferencia media con ${bore}`,
      'largest-difference': (bore) => `Diferencia máxima con ${bore}`,
    },
    figureDiffers: (bore, name, stated, simulated) =>
      `${name} (${bore}): se dio ${stated}; según los sorteos, ${simulated}. Fíese allí de los sorteos.`,
    failed: 'La simulación se paró por un fallo propio. Las cifras de arriba valen como están.',
    stale: 'Las lecturas han cambiado desde entonces.',
  },
}
