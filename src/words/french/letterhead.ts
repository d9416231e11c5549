import type { letterhead as english } from '../english/letterhead'
import type { Texts } from '../texts'

/** The head of a report, the code on it, and a job that comes in an address, in French. */
export const letterhead: Texts<typeof english> = {
  dialog: {
    title: 'En-tête',
    lead: 'Se trouve en tête de chaque rapport. Enregistré dans ce navigateur pour tous les dossiers ; aucun dossier ne l’emporte.',
    shopName: 'Nom de l’atelier',
    address: 'Adresse postale',
    picture: 'Image',
    pictureShown: 'L’image de l’atelier',
    choose: 'Choisir une image…',
    chooseOther: 'Une autre image…',
    remove: 'Retirer l’image',
    removed: 'L’image est retirée.',
    putBack: 'La remettre',
    pictureKept: 'Réduite (600 pixels au plus) et enregistrée dans ce navigateur.',
    reading: 'Lecture de l’image…',
    unreadable: (file) => `${file} n’a pas pu être lu comme image. Choisissez un fichier JPEG, PNG ou WebP.`,
    appAddress: 'Adresse de Borewall',
    appAddressHow:
      'Là où votre atelier met Borewall à disposition. Avec elle, chaque rapport porte un code qui ouvre son dossier sur le téléphone du client.',
    thisPage: 'Prendre l’adresse de cette page',
    useMended: (address) => `Prendre ${address}`,
    saved: 'Enregistré dans ce navigateur.',
    notKept: (why) => `Non enregistré. ${why}`,
    notRead: (why) => `L’en-tête n’a pas pu être lu. ${why}`,
    again: 'Essayer de nouveau',
    setAside:
      'Ce qui était enregistré ici n’a pas pu être lu. C’est mis de côté : enregistrez-le dans un fichier depuis la liste des dossiers, sous « Mis de côté ».',
    setAsideName: 'En-tête',
    newer:
      'Un Borewall plus récent garde ici un en-tête ; il reste tel quel. Rechargez la page pour obtenir ce Borewall.',
  },
  problems: {
    control: 'Il contient un caractère qui ne peut pas être imprimé. Effacez-le et tapez-le de nouveau.',
    shopNameTooLong: (most) => `${most} lettres au plus. Raccourcissez-le.`,
    addressTooLong: (most, lines) => `${lines} lignes et ${most} lettres au plus. Raccourcissez-la.`,
    appAddress: {
      'no-address': 'Ce n’est pas une adresse. Elle ressemble à https://shop.example/borewall/.',
      'no-scheme': 'Elle doit commencer par https:// ou http://.',
      'other-scheme':
        'Elle doit commencer par https:// ou http:// ; un téléphone ne peut en ouvrir aucune autre.',
      password:
        'Elle contient un nom ou un mot de passe, qui se trouverait sur chaque rapport. Laissez-le de côté.',
      fragment: 'Laissez de côté ce qui suit le # ; c’est là que va le dossier.',
      'too-long': '200 lettres au plus : une plus longue ne laisse pas de place au dossier dans le code.',
    },
  },
  reach: {
    'this-machine':
      'Seule cette machine peut ouvrir cette adresse ; le téléphone d’un client ne le peut pas.',
    'this-network': 'Seul ce qui est dans le réseau de votre atelier peut ouvrir cette adresse.',
  },
  code: {
    label: 'Code QR qui ouvre ce dossier dans Borewall',
    caption:
      'À scanner pour ouvrir ce dossier dans Borewall. Les lectures sont dans le code ; rien n’est envoyé nulle part.',
    captionWithout: (what) =>
      `À scanner pour ouvrir ce dossier dans Borewall. Les lectures sont dans le code ; rien n’est envoyé nulle part. N’y sont pas : ${what}.`,
    photographs: (count) => (count < 2 ? `${count} photo` : `${count} photos`),
    scans: (count) => (count < 2 ? `les rayons de ${count} palpage` : `les rayons de ${count} palpages`),
    notes: (count) => (count < 2 ? `${count} note` : `${count} notes`),
    list: (parts) => parts.join(', '),
    none: {
      'no-address': 'Pas de code : l’en-tête n’a pas encore d’adresse de Borewall.',
      'too-large':
        'Pas de code : ce dossier est plus grand que ce qu’un téléphone lit encore sur le papier. Remettez un fichier.',
      'not-loaded':
        'Pas de code : une partie de Borewall n’a pas pu être chargée. Rechargez la page pour essayer de nouveau.',
    },
  },
  opening: {
    ask: (job, machine, bores, readings) =>
      `Cette adresse contient un dossier : ${job}${machine === '' ? '' : `, ${machine}`}, ${bores}, ${readings}. Les photos et les rayons de palpages ne voyagent pas dans une adresse. Ouvert, il est enregistré dans ce navigateur à côté des autres dossiers ; aucun d’eux ne change.`,
    untitled: 'sans nom',
    bores: (count) => (count < 2 ? `${count} alésage` : `${count} alésages`),
    readings: (count) => (count < 2 ? `${count} lecture` : `${count} lectures`),
    open: 'Ouvrir le dossier',
    opened: (job) => `${job} ouvert depuis l’adresse`,
    address: 'L’adresse',
    notOpened: {
      damaged:
        'Le dossier de cette adresse n’est pas entier, il n’a donc pas été ouvert. Une partie de l’adresse manque ou a changé : scannez de nouveau le code, ou copiez le lien entier.',
      'too-large':
        'Cette adresse se déplie en plus que n’en porte aucun rapport, elle n’a donc pas été ouverte. Celui qui vous l’a donnée peut vous envoyer un fichier à la place.',
      newer:
        'Le dossier de cette adresse a été écrit par un Borewall plus récent. Rechargez la page pour l’obtenir, puis ouvrez l’adresse de nouveau.',
    },
    unharmed: 'Rien de ce qui est enregistré ici n’a été touché.',
  },
}
