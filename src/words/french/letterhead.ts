import type { letterhead as english } from '../english/letterhead'
import type { Texts } from '../texts'

export const letterhead: Texts<typeof english> = {
  dialog: {
    title: 'En-tête',
    lead: 'Figure en tête de chaque rapport. Il est conservé dans ce navigateur pour tous les dossiers ; aucun dossier ne l’emporte.',
    shopName: 'Nom de l’atelier',
    address: 'Adresse',
    picture: 'Image',
    pictureShown: 'L’image de l’atelier',
    choose: 'Choisir une image…',
    chooseOther: 'Une autre image…',
    remove: 'Retirer l’image',
    removed: 'L’image est retirée.',
    putBack: 'La remettre',
    pictureKept: 'Réduite (600 pixels au plus) et conservée dans ce navigateur.',
    reading: 'Lecture de l’image…',
    unreadable: (file) =>
      `${file} n’a pas pu être lu comme une image. Choisissez un fichier JPEG, PNG ou WebP.`,
    appAddress: 'Adresse de Borewall',
    appAddressHow:
      'Là où votre atelier propose Borewall. Avec elle, chaque rapport porte un code qui ouvre son dossier sur le téléphone du client.',
    thisPage: 'Prendre l’adresse de cette page',
    useMended: (address) => `Prendre ${address}`,
    saved: 'Conservé dans ce navigateur.',
    notKept: (why) => `Pas conservé. ${why}`,
    notRead: (why) => `L’en-tête n’a pas pu être lu. ${why}`,
    again: 'Réessayer',
    setAside:
      'Ce qui était conservé ici n’a pas pu être lu. Cela a été mis de côté : enregistrez-le dans un fichier depuis la liste des dossiers.',
    setAsideName: 'En-tête',
    newer:
      'Un Borewall plus récent conserve ici un en-tête ; il reste tel quel. Rechargez la page pour obtenir ce Borewall.',
  },
  problems: {
    control: 'Il contient un caractère qui ne s’imprime pas. Effacez-le et tapez-le de nouveau.',
    shopNameTooLong: (most) => `${most} lettres au plus. Raccourcissez-le.`,
    addressTooLong: (most, lines) => `${lines} lignes et ${most} lettres au plus. Raccourcissez-la.`,
    appAddress: {
      'no-address': 'Ce n’est pas une adresse. Elle ressemble à https://shop.example/borewall/.',
      'no-scheme': 'Elle doit commencer par https:// ou http://.',
      'other-scheme':
        'Elle doit commencer par https:// ou http:// ; un téléphone n’en peut ouvrir aucune autre.',
      password: 'Elle contient un nom ou un mot de passe, qui figurerait sur chaque rapport. Retirez-le.',
      fragment: 'Retirez ce qui suit le # ; c’est la place du dossier.',
      'too-long': '200 lettres au plus : une plus longue ne laisse pas de place au dossier dans le code.',
    },
  },
  reach: {
    'this-machine': 'Seul cet appareil peut ouvrir cette adresse ; le téléphone d’un client ne le peut pas.',
    'this-network': 'Seul ce qui est sur le réseau de votre atelier peut ouvrir cette adresse.',
  },
  code: {
    label: 'Code QR qui ouvre ce dossier dans Borewall',
    caption:
      'Scannez-le pour ouvrir ce dossier dans Borewall. Les mesures sont dans le code lui-même ; rien n’est envoyé nulle part.',
    captionWithout: (what) =>
      `Scannez-le pour ouvrir ce dossier dans Borewall. Les mesures sont dans le code lui-même ; rien n’est envoyé nulle part. N’y sont pas : ${what}.`,
    photographs: (count) => (count === 1 ? '1 photographie' : `${count} photographies`),
    scans: (count) => (count === 1 ? 'les rayons d’1 balayage' : `les rayons de ${count} balayages`),
    notes: (count) => (count === 1 ? '1 note' : `${count} notes`),
    list: (parts) => parts.join(', '),
    none: {
      'no-address': 'Pas de code : l’en-tête n’a pas encore l’adresse de Borewall.',
      'too-large':
        'Pas de code : ce dossier est plus grand que ce qu’un téléphone lit encore sur le papier. Remettez un fichier.',
      'not-loaded':
        'Pas de code : une partie de Borewall n’a pas pu être chargée. Rechargez la page pour réessayer.',
    },
  },
  opening: {
    ask: (job, machine, bores, readings) =>
      `Cette adresse contient un dossier : ${job}${machine === '' ? '' : `, ${machine}`}, ${bores}, ${readings}. Les photographies et les rayons des balayages ne voyagent pas dans une adresse. Ouvert, il est conservé dans ce navigateur à côté des autres dossiers ; aucun d’eux ne change.`,
    untitled: 'sans nom',
    bores: (count) => (count === 1 ? '1 alésage' : `${count} alésages`),
    readings: (count) => (count === 1 ? '1 mesure' : `${count} mesures`),
    open: 'Ouvrir le dossier',
    opened: (job) => `${job} ouvert depuis l’adresse`,
    address: 'L’adresse',
    notOpened: {
      damaged:
        'Le dossier de cette adresse n’est pas entier et n’a pas été ouvert. Une partie de l’adresse manque ou a changé : scannez de nouveau le code, ou copiez le lien entier.',
      'too-large':
        'Cette adresse, une fois décompressée, dépasse tout ce qu’un rapport contient, et n’a pas été ouverte. La personne qui vous l’a donnée peut vous envoyer un fichier.',
      newer:
        'Le dossier de cette adresse a été écrit par un Borewall plus récent. Rechargez la page pour l’obtenir, puis ouvrez l’adresse de nouveau.',
    },
    unharmed: 'Rien de ce qui est conservé ici n’a été touché.',
  },
}
