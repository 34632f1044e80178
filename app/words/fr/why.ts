import type * as english from "../en/why.ts";
import type { Spoken } from "../spoken.ts";

export const why: Spoken<typeof english.why> = {
  milkFirst: "Pourquoi le lait d’abord ?",
  clearEnough: "Clair, c’est-à-dire ?",
  pourBack: "Pourquoi reverser ?",
  topUp: "À quoi sert l’appoint ?",
  range: "Que dit la fourchette ?",
  curdle: "Est-ce bien sûr ?",
  whichYield: "Quel rendement ?",
};

const practice = "Pratique courante, sans source.";

export const answers: Spoken<typeof english.answers> = {
  milkFirst: {
    says: [
      "Versé lentement dans le lait froid, le début du punch rencontre beaucoup de lait et le caille fin. Un caillé fin se tasse sur le filtre et retient le voile.",
      "Le lait versé dans le punch rencontre tout l’acide d’un coup et prend en caillé plus gros. La fiche dit dans quel sens va cette boisson.",
    ],
    source: practice,
  },
  clearEnough: {
    says: [
      "Tenir à contre-jour un verre de ce qui goutte maintenant, un texte imprimé derrière. Il se lit bien : clair. Il se lit à travers un voile : voilé. Il ne se lit plus : trouble.",
      "Le tout premier coule toujours trouble, jusqu’à ce que le caillé se soit déposé sur le filtre.",
      "Clair ne veut pas dire qu’il se garde : il contient encore du lait. Le tenir au froid.",
    ],
    source: practice,
  },
  pourBack: {
    says: [
      "Le caillé sur le papier est le filtre le plus fin. Ce qui a coulé avant qu’il se dépose est trouble, et s’éclaircit en traversant le caillé.",
      "Verser doucement, sur une cuillère ou le long de la paroi : un trou dans le caillé laisse passer le voile.",
    ],
    source: practice,
  },
  topUp: {
    says: [
      "L’eau du lait allonge la boisson, et le caillé et le filtre gardent une part de tout ce qu’elle contenait. Le spiritueux réservé jusqu’ici ne perd rien, et lui rend sa force.",
      "La quantité dépend de ce qui est passé. C’est pourquoi le rendement se mesure d’abord.",
    ],
    source: "La quantité se calcule en masse ; le plan l’ouvre. Le reste est pratique courante.",
  },
  range: {
    says: [
      "Sur dix comme celui-ci, huit environ tombent entre les deux chiffres. Les deux autres tombent au-dessous ou au-dessus.",
      "En dehors, la mesure n’est pas fausse pour autant : noter ce que vous voyez. Avec vos propres lots, la fourchette s’ajuste à votre bar.",
    ],
    source:
      "Un rendement : pratique courante, puis vos lots dès le troisième ; dans des bars simulés, 80 à 85 % des lots suivants tombaient dedans. Un égouttage : d’après ses relevés.",
  },
  curdle: {
    says: [
      "Calculé d’après les acides du punch et ce que le lait en absorbe. Personne n’a mesuré vos citrons ni votre lait. Là où une note dit supposé, estimation ou non mesuré, s’y fier moins.",
      "Nettement : ce lait caille aux deux bouts de la plage de pH. Limite : à un seul bout. Non : à aucun.",
      "Dans le doute, l’essayer dans un verre : une cuillerée de lait, et du punch selon la proportion. S’il n’a pas caillé après quelques minutes, changer le punch avant le lot.",
    ],
    source: "Chaque chiffre ouvre sa source. L’essai dans un verre est pratique courante.",
  },
  whichYield: {
    says: [
      "Tout ce qui est clair une fois l’égouttage fini, dans un seul récipient, avant l’appoint. Pas le trouble : il a été reversé. Pas ce qu’on presse du caillé : il coule trouble.",
      "L’appoint, les bouteilles et la prévision suivante viennent de ce seul chiffre. Si deux téléphones en ont noté deux, compte celui mesuré quand tout y était.",
    ],
    source: practice,
  },
};
