import type { simulation as english } from '../english/simulation'
import type { Texts } from '../texts'

/** Checking the linear figures by drawing every error, in French. */
export const simulation: Texts<typeof english> = {
  simulation: {
    start: 'Vérifier par simulation',
    lead: 'Tire au sort chaque erreur, un grand nombre de fois, et regarde si les ± des diamètres tiennent.',
    running: (done, all) => `${done} tirages sur ${all}`,
    cancel: 'Arrêter',
    agrees: (trials, apart, place) =>
      `${trials} tirages de toutes les erreurs confirment les ± des diamètres : leurs bouts diffèrent de ${apart} au plus, ici : ${place}.`,
    differs: (trials, apart, place) =>
      `${trials} tirages de toutes les erreurs ne confirment pas les ± des diamètres : leurs bouts diffèrent de ${apart}, ici : ${place}. Fiez-vous là à l’intervalle simulé :`,
    interval: (low, high) => `${low} à ${high}`,
    micronInterval: (low, high) => `${low} à ${high}`,
    inside: (linear, simulated) => `Là, dans les limites : ${linear}, selon les tirages ${simulated}.`,
    figuresAgree: (kinds) => `De même les ± et les étendues de ce qui vient de plusieurs points : ${kinds}.`,
    kinds: {
      'level-mean': 'moyennes de niveau',
      'fitted-oval': 'ovales ajustés',
      ovality: 'ovalisation',
      taper: 'conicité',
      'mean-difference': 'différences moyennes',
      'largest-difference': 'plus grandes différences',
    },
    names: {
      'level-mean': (place) => `Moyenne à ${place}`,
      'fitted-oval': (place) => `Ovale ajusté à ${place}`,
      ovality: (rule) => `Ovalisation, ${rule}`,
      taper: (rule) => `Conicité, ${rule}`,
      'mean-difference': (bore) => `Différence moyenne, contre ${bore}`,
      'largest-difference': (bore) => `Plus grande différence, contre ${bore}`,
    },
    figureDiffers: (bore, name, stated, simulated) =>
      `${name} (${bore}) : annoncé ${stated}, selon les tirages ${simulated}. Fiez-vous là aux tirages.`,
    failed:
      'La simulation s’est arrêtée par une faute qui lui est propre. Les chiffres ci-dessus restent tels quels.',
    stale: 'Les lectures ont changé depuis.',
  },
}
