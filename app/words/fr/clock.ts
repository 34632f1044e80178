import type * as english from "../en/clock.ts";
import type { Spoken } from "../spoken.ts";

export const clock: Spoken<typeof english.clock> = {
  moved: (by) => `L’horloge du téléphone a bougé de ${by}.`,
  behind: (by) =>
    `L’horloge du téléphone a reculé : elle a ${by} de retard sur la dernière ligne écrite ici.`,
  ask: "Le temps a-t-il vraiment passé, ou l’horloge seule a-t-elle changé ?",
  keep: "Seule l’horloge a changé",
  keepMeans: (due) => `Les attentes gardent leur durée : prochaine échéance ${due}`,
  trust: "La nouvelle heure est la bonne",
  trustMeans: (due) => `Les échéances ne changent pas : la prochaine ${due}`,
  noWait: "Aucune attente en cours ; le journal le note",
  late: (due, length) => `${due}, ${length} de retard`,
  zone: (zone) =>
    `Le téléphone suit maintenant l’heure de ${zone}. Les heures d’ici la suivent ; chaque attente dure autant qu’avant.`,
  slept: (length) => `Le téléphone a dormi ${length} : rien ne pouvait sonner ici.`,
};
