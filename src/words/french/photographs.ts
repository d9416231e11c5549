import type { photographs as english } from '../english/photographs'
import type { Texts } from '../texts'

/** Photographs of surface findings, in French. */
export const photographs: Texts<typeof english> = {
  photographs: {
    title: 'Photos',
    add: 'Ajouter une photo',
    camera: 'Prendre une photo',
    drop: 'ou en déposer une ici',
    kept: 'Réduite (1600 pixels au plus) et enregistrée dans ce navigateur. Ce que l’appareil photo a écrit à côté de l’image, le lieu par exemple, est laissé de côté.',
    reading: 'Lecture de l’image…',
    shown: (name) => `Montrer ${name}`,
    large: (name, finding) => `${finding} : ${name}`,
    remove: (name) => `Retirer ${name}`,
    removeShort: 'Retirer',
    notHere: 'photo absente de ce navigateur',
    unreadable: (name) => `${name} n’a pas pu être lu comme image. Choisissez un fichier JPEG, PNG ou WebP.`,
    notKept: (name, why) => `${name} n’est pas enregistré. ${why}`,
    unnamed: 'photo',
    leftOut: {
      notHere: (count) =>
        count === 1
          ? 'Une photo n’y est pas : elle n’est pas dans ce navigateur.'
          : `${count} photos n’y sont pas : elles ne sont pas dans ce navigateur.`,
      noRoom: (count) =>
        count === 1
          ? 'Une photo n’y est pas : le fichier serait plus grand que Borewall n’en lit.'
          : `${count} photos n’y sont pas : le fichier serait plus grand que Borewall n’en lit.`,
    },
    damaged: (count) =>
      count === 1
        ? 'Une photo de ce fichier est endommagée et a été laissée de côté.'
        : `${count} photos de ce fichier sont endommagées et ont été laissées de côté.`,
  },
}
