import type { KitWords } from "../complete.ts";
import { decimals } from "../format.ts";

const many = (count: number): string => decimals(count, 0);
const entries = (count: number): string =>
  count < 2 ? `${count} entrée` : `${many(count)} entrées`;
const batches = (count: number): string => (count < 2 ? `${count} lot` : `${many(count)} lots`);

export const kit: KitWords = {
  title: "Outils",
  sound: {
    title: "Essai du son",
    why: "L’application ne dit qu’elle sonnera qu’une fois entendue sur ce téléphone. Poser le téléphone à sa place, s’éloigner de deux mètres, puis faire sonner.",
    play: "Faire sonner l’alarme",
    again: "Faire sonner encore",
    ask: "L’a-t-on entendue à deux mètres ?",
    yes: "Oui",
    no: "Non",
    heard: (when) => `Entendue ${when}. Cela vaut 12 heures.`,
    never: "Personne ne l’a encore entendue sur ce téléphone.",
    back: "Retour au Poste",
    help: "Monter le volume des médias, couper le mode silencieux, débrancher les autres enceintes, puis faire sonner encore. Si rien ne vient, régler l’alarme du téléphone à chaque attente.",
  },
  spoken: {
    title: "Étape à voix haute",
    why: "Pendant la sonnerie, le téléphone peut aussi dire quel lot et quelle étape. Rien de plus n’est promis : c’est le son qui compte.",
    label: "Dire l’étape à voix haute",
    off: "Arrêt",
    on: "Marche",
    tryIt: "Essayer la voix",
    sample: "Pear Beacon : Repos, c’est l’heure",
    states: {
      "no-voice":
        "Ce téléphone n’a pas de voix à lui pour ces mots. Les voix du réseau ne servent pas.",
      absent: "Ce navigateur ne sait pas parler.",
    },
  },
  notices: {
    title: "Une notification en quittant",
    why: "Juste après l’avoir quittée, l’application peut encore montrer une notification quand l’heure vient. Le téléphone décide ; rien n’est promis.",
    ask: "Autoriser une notification",
    states: {
      granted: "Autorisée.",
      refused: "Non autorisée. Les réglages du téléphone pour ce site peuvent changer cela.",
      unasked: "Pas encore demandée.",
      absent: "Ce navigateur n’a pas de notifications.",
    },
  },
  units: {
    title: "Unités",
    volumes: "Afficher les volumes en",
    auto: "Selon le pays",
    ml: "ml",
    oz: "oz",
    degrees: "Afficher les températures en",
    C: "°C",
    F: "°F",
    ounce: "Une once fait",
    bar: "30 ml",
    barDetail: "le doseur du bar",
    exact: "29,57 ml",
    exactDetail: "once liquide des États-Unis",
    note: "Un lot en cours garde l’once de son plan. Le pays est celui du réglage du téléphone. Ce qui est stocké, les tableurs, les formules et les sources restent en ml et en °C.",
  },
  tools: {
    title: "Matériel de la maison",
    why: "À quoi un plan arrondit ses quantités, et ce que contient au plus un récipient.",
    jigger: "Doseur ou pichet, gradué tous les",
    scale: "Balance, graduée tous les",
    ml: (step) => `${step} ml`,
    g: (step) => `${step} g`,
    vessel: "Plus grand récipient, ml",
    vesselHint: "Un lot qui n’y tient pas est planifié en fournées égales.",
    vesselFault: "Saisir sa contenance en ml, de 100 à 1000000, comme 10000.",
    currency: "Signe de votre monnaie",
    currencyHint: "Écrit près de chaque prix et coût. Laisser vide pour aucun.",
    currencyFault: "Saisir un signe de 4 lettres au plus, comme € ou kr.",
  },
  room: {
    title: "Équipe et place",
    why: "La liste de préparation se planifie dans ces limites.",
    labels: {
      people: "Personnes en préparation",
      filterStands: "Supports de filtre",
      fridge: "Place au frigo pour les lots, litres",
      freezer: "Place au congélateur pour les lots, litres",
    },
    hints: {
      people: "Qui peut verser et filtrer en même temps.",
      filterStands: "Une clarification en occupe un, du filtre mouillé à la dernière goutte.",
      fridge: "Ce qui y passe la nuit compte de tout son volume.",
      freezer: "Pour les lavages au gras et les bouteilles gardées au congélateur.",
    },
    fault: (low, high) => `Saisir un nombre de ${low} à ${high}.`,
    from: "Quelqu’un est là de",
    to: "à",
    hoursNote:
      "Rien n’est planifié à la main hors de ces heures ; les attentes passent la nuit. Deux fois la même heure veut dire toujours.",
  },
  hands: {
    title: "Mains mouillées et gants",
    hand: "On touche l’écran de la",
    right: "Main droite",
    left: "Main gauche",
    size: "Taille des touches",
    finger: "Doigt",
    glove: "Gant",
    gloveDetail: "plus grandes, plus écartées",
    wet: "Une touche géante par étape",
    offer: "La proposer",
    offerDetail: "quand l’écran est mouillé",
    always: "Toujours",
    never: "Jamais",
    note: "Un tourne-pages ou un clavier marche aussi à chaque étape : Page suivante gardée enfoncée, ou deux fois, vaut un appui long. Page précédente revient.",
  },
  theme: {
    title: "Écran",
    label: "Clair ou sombre",
    auto: "Comme le téléphone",
    dark: "Sombre",
    light: "Clair",
  },
  language: {
    title: "Langue",
    label: "L’application parle",
    auto: "La langue du téléphone",
    note: "Ce qui est déjà écrit reste tel quel. Les nombres prennent la virgule ou le point de la langue.",
  },
  backup: {
    title: "Sauvegarde",
    why: "Tout est sur ce seul téléphone : s’il est perdu, le journal l’est aussi. Garder une copie après chaque lot.",
    make: "Tout enregistrer en un fichier",
    download: "L’enregistrer dans les téléchargements",
    shared: (name) => `${name} a été remis au menu de partage.`,
    saved: (name) => `${name} est dans les téléchargements du navigateur.`,
    dismissed: "Le menu de partage a été fermé : rien n’est enregistré.",
    writing: (done, all) => `Écriture : ${many(done)} sur ${entries(all)}.`,
    leaveNot: "Rester sur cette page jusqu’à la fin.",
    giveUp: "Arrêter",
    ready: "Le fichier est prêt.",
    handOn: "Partager le fichier",
    never: "Aucune sauvegarde n’a encore été faite sur ce téléphone.",
    last: (when) => `Dernière sauvegarde : ${when}.`,
    dueEnded: (count, ever) =>
      ever
        ? `${batches(count)} ${count < 2 ? "terminé" : "terminés"} depuis la dernière sauvegarde.`
        : `${batches(count)} ${count < 2 ? "terminé" : "terminés"}, et aucune sauvegarde encore sur ce téléphone.`,
    dueEntries: (count, ever) =>
      ever
        ? `${entries(count)} de plus depuis la dernière sauvegarde.`
        : `${entries(count)} jusqu’ici, et aucune sauvegarde encore sur ce téléphone.`,
    toKit: "À Sauvegarde, dans Outils",
  },
  restore: {
    title: "Importer une sauvegarde",
    pick: "Fichier de sauvegarde",
    hint: "Un fichier enregistré par cette application, sur ce téléphone ou un autre. Rien n’est ajouté sans votre accord, et rien ici n’est écrasé.",
    reading: "Lecture du fichier…",
    readingOf: (done, all) => `Lecture : ${many(done)} sur ${entries(all)}.`,
    adding: (done, all) => `Ajout : ${many(done)} sur ${entries(all)}.`,
    beginsAdding: "Ajout…",
    settling: (done, all) => `Ajouté. Mise en ordre des lots : ${many(done)} sur ${many(all)}.`,
    fresh: (count) => `${entries(count)} que ce téléphone n’a pas`,
    known: (count) => `${entries(count)} déjà ici, laissées telles quelles`,
    left: (count) =>
      count < 2
        ? `${count} ligne écartée : garder le fichier`
        : `${many(count)} lignes écartées : garder le fichier`,
    leftTitle: "Lignes écartées",
    line: (number, why) => `Ligne ${many(number)} : ${why}`,
    more: (count) => `et ${many(count)} de plus`,
    startless: (count) =>
      `${batches(count)} sans début, dans le fichier ou ici : gardés, et montrés quand le début est importé aussi`,
    missing: (lines, found) =>
      `Ce fichier est abîmé : il devrait contenir ${entries(lines)} et il y en a ${many(found)}. Chercher d’abord une copie entière.`,
    altered:
      "Ce fichier a été modifié après son enregistrement. Chercher d’abord une copie intacte.",
    useRest: "Prendre ce qui se lit",
    nothing: "Il n’y a rien que ce téléphone n’ait déjà.",
    add: (count) => `Ajouter ${entries(count)}`,
    added: (count) => (count < 2 ? `${count} entrée ajoutée.` : `${entries(count)} ajoutées.`),
  },
  table: {
    title: "Pour un tableur",
    why: "Des tables pour travailler ailleurs. Ce ne sont pas des sauvegardes : on ne peut pas les importer.",
    batches: "Lots pour un tableur",
    readings: "Relevés pour un tableur",
    writing: (done, all) => `Écriture : ${many(done)} sur ${batches(all)}.`,
  },
  keeping: {
    title: "Stockage",
    protected: "À l’abri du nettoyage",
    yes: "oui",
    no: "non : le navigateur peut l’effacer si la place manque",
    unknown: "ce navigateur ne le dit pas",
    used: "Utilisé",
    usedOf: (used, quota) => `${used} sur ${quota} environ`,
    ask: "Demander au téléphone de le protéger",
    asking: "Demande…",
    refused:
      "Le téléphone a refusé. Il décide seul, surtout d’après l’usage : mettre l’application sur l’écran d’accueil, s’en servir, et redemander. Garder des sauvegardes.",
    mayBeCleared:
      "Enregistré. Le navigateur peut l’effacer si la place manque au téléphone : mettre l’application sur l’écran d’accueil, et garder des sauvegardes (Outils).",
    granted:
      "Le téléphone le protège désormais. Garder quand même des sauvegardes : un téléphone perdu est perdu.",
    cannotAsk: "On ne peut pas le demander à ce navigateur. Garder des sauvegardes.",
  },
  version: {
    title: "Version",
    now: (version) => `Version actuelle : ${version}.`,
    none: "Aucune version plus récente n’attend. L’application en cherche une dès qu’il y a du réseau.",
    waiting: "Une version plus récente est prête.",
    restart: "Redémarrer maintenant",
  },
  demo: {
    title: "Démo",
    why: "Fiches inventées d’un bar inventé, pour voir. Elles se mettent, ou se remettent comme elles étaient, depuis Fiches.",
    link: "Aux Fiches",
  },
  cautions: { title: "Mises en garde" },
};
