import type { model as english } from '../english/model'
import type { Texts } from '../texts'

/** The wall as a model to print, in French. */
export const model: Texts<typeof english> = {
  model: {
    title: 'Un modèle à imprimer',
    lead: (drawn) =>
      `Cette paroi comme un tube à tenir en main. ${drawn}. Les lumières sont des poches, non des trous, pour que le tube reste entier ; une rainure au-dehors, depuis le plan de joint, marque l’avant.`,
    unmeasured:
      'Là où personne n’a mesuré, la paroi est dessinée entre les lectures, non mesurée : le fichier en couleur la montre plus pâle et avec des lignes sombres, le fichier pour imprimante ne le peut pas. Rien ne peut être mesuré sur un modèle.',
    ways: {
      stl: 'Enregistrer pour une imprimante (STL)',
      glb: 'Enregistrer en couleur (glTF)',
    },
    making: 'Le modèle se fait…',
    saved: (name, size) => `Enregistré sous le nom ${name} : ${size}.`,
    size: (height, across, scale) => `hauteur ${height}, largeur ${across}, échelle ${scale}`,
    scale: (drawn) => `1:${drawn}`,
    none: {
      'wall-meets-axis':
        'À cette amplification, la paroi serait dessinée à travers l’axe, et il ne reste pas de tube à imprimer. Choisissez-en une plus petite à côté de l’image.',
    },
    failed: 'Le modèle n’a pas pu être fait dans ce navigateur.',
    fileName: (name, factor, scale) => `${name} amplifie x${factor} echelle ${scale}`,
    header: (factor, scale) =>
      `Paroi d'alesage amplifiee x${factor}, echelle ${scale}, mm. Ne pas y mesurer.`,
    parts: {
      body: 'corps, non la paroi',
      measured: 'paroi entre les lectures',
      unmeasured: 'paroi dessinée entre les lectures, non mesurée',
      'unmeasured-line': 'lignes là où personne n’a mesuré',
    },
    notes: {
      drawn:
        'Les différences de diamètre sont dessinées plus grandes de l’amplification. Rien ne peut y être mesuré.',
      ports: 'Les lumières sont des poches à coins droits, non des trous.',
      front: 'La rainure au-dehors, depuis le plan de joint, est à 0°, l’avant.',
    },
  },
}
