import type { photographs as english } from '../english/photographs'
import type { Texts } from '../texts'

export const photographs: Texts<typeof english> = {
  photographs: {
    title: 'Fotografías',
    add: 'Añadir una fotografía',
    camera: 'Hacer una fotografía',
    drop: 'o suelte una aquí',
    kept: 'Se reduce (1600 píxeles como mucho) y se guarda en este navegador. Lo que la cámara escribió junto a la imagen, como el lugar, se deja fuera.',
    reading: 'Leyendo la imagen…',
    shown: (name) => `Mostrar ${name}`,
    large: (name, finding) => `${finding}: ${name}`,
    remove: (name) => `Quitar ${name}`,
    removeShort: 'Quitar',
    notHere: 'la fotografía no está en este navegador',
    unreadable: (name) => `${name} no se pudo leer como imagen. Elija un archivo JPEG, PNG o WebP.`,
    notKept: (name, why) => `${name} no se ha guardado. ${why}`,
    unnamed: 'fotografía',
    leftOut: {
      notHere: (count) =>
        count === 1
          ? 'Falta una fotografía: no está en este navegador.'
          : `Faltan ${count} fotografías: no están en este navegador.`,
      noRoom: (count) =>
        count === 1
          ? 'Falta una fotografía: el archivo sería más grande de lo que lee Borewall.'
          : `Faltan ${count} fotografías: el archivo sería más grande de lo que lee Borewall.`,
    },
    damaged: (count) =>
      count === 1
        ? 'Una fotografía de este archivo está dañada y se dejó fuera.'
        : `${count} fotografías de este archivo están dañadas y se dejaron fuera.`,
  },
}
